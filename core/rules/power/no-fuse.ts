import { suppliesOf, unitName, unitOfPart } from '../look.ts';
import { defineRule } from '../rule.ts';
import { unfusedWires } from './guarded-wire.ts';

export const noFuse = defineRule({
  id: 'power/no-fuse',
  severity: 'danger',
  title: 'Nothing protects the wire',
  compares: 'what a supply can give against what each wire stands that it feeds with no fuse between',
  why: 'In a short the wire itself is the fuse. A battery gives hundreds of amperes.',
  advice:
    'Put a fuse into the plus lead at the source: within 7 in (0.18 m) of it, or within 40 in where the lead is sheathed.',
  source: '33 CFR 183.455(b) for the place; the wire’s limit as in fuse-over-wire',
  follows: ['drawing/fits-but-should-not'],
  messages: {
    bare: '{supply} can put {amps A} into {cable} ({wire}), which stands {limit rated}, and no fuse is between.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      for (const { part } of suppliesOf(trial.circuit)) {
        const amps = part.spec.peakAmps;
        for (const wire of unfusedWires(station, trial.circuit, trial.receive.on, part.plus)) {
          if (amps <= wire.limitAmps) continue;
          const unit = unitOfPart(part);
          report({
            message: 'bare',
            severity: 'danger',
            at: [{ cable: wire.cable }, { unit }],
            values: {
              supply: unitName(station, unit),
              amps,
              cable: wire.number,
              wire: wire.wire,
              limit: wire.limitAmps,
            },
            hookup: hookup.id,
          });
        }
      }
    }
  },
});
