import type { SupplyPart } from '../../circuit/circuit.ts';
import { isOpenGate } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { unitName } from '../../station/parts.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { conductorsOf, joinedTo } from '../../trial/metal/conductors.ts';
import { loadsOf, type Numbered, unitOfPart } from '../../trial/parts.ts';
import { averageOver } from '../../trial/power/battery-life.ts';
import { defineRule } from '../rule.ts';

export const supplyOverloaded = defineRule({
  id: 'power/supply-overloaded',
  severity: 'fault',
  title: 'The supply is asked for too much',
  compares: 'what the loads ask for against the supply’s continuous and peak ratings, in every moment',
  why: 'Beyond its rating a supply limits, shuts down or overheats, and everything on it suffers when one unit sends.',
  advice: 'Use a supply of a higher rating, or take loads off it.',
  source:
    'the supply’s own ratings; in doubt above 80 % for a continuous load (NEC 210.20, 125 % rule), averaged by the mode’s duty',
  follows: ['power/short-circuit', 'power/reversed-polarity'],
  messages: {
    peak: '{supply} is asked for {amps A} {moment}; it gives {peak rated} at the very most and {rated rated} continuously.',
    continuous: '{supply} is asked for {amps A} {moment}; it gives {rated rated} continuously.',
    near: '{supply} gives {average A} on average {moment}, {share %} of the {rated rated} it is rated at.',
  },
  looksAt: {
    supply(supply, { station, trial }, report) {
      const { amps: rated, peakAmps: peak } = supply.part.spec;
      if (rated === 0) return;
      const between = Math.max(0, trial.receive.dc.ampsIn(supply.index));
      const asked = instantsOfPart(trial, supply.index).map(({ name, reach }) => {
        const amps = demandOn(trial, reach, supply);
        return { name, amps, average: name !== 'receive' ? averageOver(amps, between, station.plan.duty) : amps };
      });
      const message = worstOf(asked.map(({ amps, average }) => levelOf(amps, average, rated, peak)));
      const unit = unitOfPart(supply.part);
      for (const { name, amps, average } of asked) {
        // Where it is asked for too much, a moment in which it is merely near its rating says nothing new.
        if (message === null || levelOf(amps, average, rated, peak) !== message) continue;
        const words = { supply: unitName(station, unit), moment: momentWords[name] };
        report({
          message,
          severity: message === 'near' ? 'doubt' : 'fault',
          at: [{ unit }],
          values: { ...words, amps, average, rated, peak, share: (message === 'near' ? average : amps) / rated },
          moment: name,
          weight: amps,
          touches: [`supply:${unit}`],
        });
      }
    },
  },
});

type Level = 'peak' | 'continuous' | 'near';

function levelOf(amps: number, average: number, rated: number, peak: number): Level | null {
  if (amps > peak) return 'peak';
  if (amps > rated) return 'continuous';
  return average > 0.8 * rated ? 'near' : null;
}

const worstOf = (levels: readonly (Level | null)[]): Level | null =>
  (['peak', 'continuous', 'near'] as const).find((level) => levels.includes(level)) ?? null;

/** What a supply gives, or where it can't give it what the loads on it ask for. */
function demandOn(trial: Trial, reach: Reach, supply: Numbered<SupplyPart>): number {
  const given = reach.dc.ampsIn(supply.index);
  if (reach.dc.modeOf(supply.index) === 'regulating') return given;
  const fed = joinedTo(conductorsOf(trial.circuit, reach.on), supply.part.plus);
  const asked = loadsOf(trial.circuit).filter(({ part }) => fed.has(part.plus) && isOpenGate(part.gate, reach.on));
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
