import type { SupplyPart } from '../../circuit/circuit.ts';
import { isOpenGate } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { instantsOf, loadsOf, type Numbered, suppliesOf, unitName, unitOfPart } from '../look.ts';
import { defineRule } from '../rule.ts';

export const supplyOverloaded = defineRule({
  id: 'power/supply-overloaded',
  severity: 'fault',
  title: 'The supply is asked for too much',
  compares: 'what the loads ask for against the supply’s continuous and peak ratings, in every moment',
  why: 'Beyond its rating a supply limits, shuts down or overheats, and everything on it suffers when one unit sends.',
  advice: 'Use a supply of a higher rating, or take loads off it.',
  source: 'the supply’s own ratings; in doubt above 80 % for a continuous load (NEC 210.20, 125 % rule)',
  follows: ['power/short-circuit', 'power/reversed-polarity'],
  messages: {
    peak: '{supply} is asked for {amps A} in {moment}; it gives {peak rated} at the very most and {rated rated} continuously.',
    continuous: '{supply} is asked for {amps A} in {moment}; it gives {rated rated} continuously.',
    near: '{supply} gives {amps A} in {moment}, {share %} of the {rated rated} it is rated at.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      for (const { name, reach } of instantsOf(trial)) {
        for (const supply of suppliesOf(trial.circuit)) {
          const { amps: rated, peakAmps: peak } = supply.part.spec;
          const amps = demandOn(trial, reach, supply);
          const share = amps / rated;
          if (rated === 0 || share <= 0.8) continue;
          const unit = unitOfPart(supply.part);
          report({
            message: amps > peak ? 'peak' : share > 1 ? 'continuous' : 'near',
            severity: share > 1 ? 'fault' : 'doubt',
            at: [{ unit }],
            values: { supply: unitName(station, unit), amps, rated, peak, share, moment: name },
            hookup: hookup.id,
            moment: name,
            touches: [`supply:${unit}`],
          });
        }
      }
    }
  },
});

/** What a supply gives, or where it can't give it what the loads on it ask for. */
function demandOn(trial: Trial, reach: Reach, supply: Numbered<SupplyPart>): number {
  const given = reach.dc.amps[supply.index] as number;
  if (reach.dc.modes.get(supply.index) === 'regulating') return given;
  const island = reach.dc.island[supply.part.plus];
  const asked = loadsOf(trial.circuit).filter(
    ({ part }) => reach.dc.island[part.plus] === island && isOpenGate(part.gate, reach.on),
  );
  const total = asked.reduce((sum, { part }) => {
    const amount = part.states.find((s) => isOpenGate(s.gate, reach.on))?.amount ?? part.spec.amount;
    const volts = supply.part.spec.volts;
    return (
      sum +
      (part.spec.law === 'current'
        ? amount
        : part.spec.law === 'power'
          ? amount / volts
          : amount > 0
            ? volts / amount
            : 0)
    );
  }, 0);
  return Math.max(given, total);
}
