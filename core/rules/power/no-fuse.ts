import { unfusedM } from '../../catalog/wire/fuses.ts';
import { fuseAt } from '../../fixes/leads.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { findCable, unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { partsOfCable } from '../../trial/own-parts.ts';
import { unitOfPart } from '../../trial/parts.ts';
import { unfusedFrom } from '../../trial/power/guarded-wire.ts';
import { defineRule, fixed } from '../rule.ts';

/**
 * The fuse belongs within 7 in of the source along the wire (`unfusedM`), within 40 in where the wire is sheathed all the
 * way; within 72 in where it is sheathed and starts at the posts of a battery.
 */
const sheathedM = 1.02;
const fromPostM = 1.83;

export const noFuse = defineRule({
  id: 'power/no-fuse',
  severity: 'danger',
  title: 'Nothing protects the wire',
  compares: 'what a supply can give against what each wire stands that it feeds with no fuse between',
  why: 'In a short the wire itself is the fuse. A battery gives hundreds of amperes.',
  advice:
    'Put a fuse into the plus lead at the source: within 7 in (0.18 m) of it, or within 40 in (1 m) where the lead runs in conduit or another sheath.',
  source:
    '33 CFR 183.455(b) for 7 and 40 in, ABYC E-11 for 72 in in a sheath from a battery’s own posts; the wire’s limit as in fuse-over-wire',
  follows: ['drawing/fits-but-should-not'],
  messages: {
    bare: '{supply} can put {amps A} into {cable} ({wire}), which stands {limit rated}, and no fuse is between.',
    far: '{cable} ({wire}) stands {limit rated} and runs without a fuse up to {far m} from {supply}, which can put {amps A} into it.',
  },
  looksAt: {
    supply({ part }, { station, trial }, report) {
      const amps = part.spec.peakAmps;
      const { wires, fused } = unfusedFrom(station, trial.circuit, trial.receive.on, part.plus);
      for (const { cable, number, wire, limitAmps, farM, sheathed } of wires) {
        if (amps <= limitAmps || (fused && farM <= (sheathed ? sheathedM : unfusedM))) continue;
        // What is left to doubt: whether it is sheathed, or for a sheathed one whether the longer way counts.
        const isDoubt = fused && farM <= (sheathed && part.battery ? fromPostM : sheathedM);
        const unit = unitOfPart(part);
        report({
          message: fused ? 'far' : 'bare',
          severity: isDoubt ? 'doubt' : 'danger',
          at: [{ cable }, { unit }],
          values: { supply: unitName(station, unit), amps, cable: number, wire, limit: limitAmps, far: farM },
          weight: amps,
          ...fixed(fixOf(station, trial, cable, unit, limitAmps, amps)),
        });
      }
    },
  },
});

/** A fuse at the supply's end of the lead, for the most that flows in it. */
function fixOf(station: Station, trial: Trial, id: string, unit: string, limitAmps: number, sourceAmps: number) {
  const cable = findCable(station, id);
  const live = partsOfCable(trial.circuit, id).find(({ part }) => part.origin.type === 'wire')?.index;
  if (!cable || live === undefined) return undefined;
  const most = Math.max(...instantsOfPart(trial, live).map(({ reach }) => Math.abs(reach.dc.ampsIn(live))));
  return fuseAt(cable, unit, most, limitAmps, sourceAmps);
}
