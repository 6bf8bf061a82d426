import type { SupplyPart } from '../../circuit/circuit.ts';
import { placeOfContact, portName, unitName } from '../../station/parts.ts';
import { isFeed, loadVolts, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

/** A supply that drops more than this share of its voltage at its rated current is not regulated. */
const unregulatedDrop = 0.1;

export const unregulated = defineRule({
  id: 'power/unregulated',
  severity: 'doubt',
  title: 'An unregulated supply that rises when little is drawn',
  compares: 'the voltage of an unregulated supply with nothing on it against what each unit that it feeds stands',
  why: 'It is right while the unit draws its current, and too high in the moment in which it is switched on, off, or idles.',
  advice: 'Use a regulated supply, or put a regulator between.',
  source: 'the units’ own limits; a drop of a tenth at rated current is taken as unregulated (common practice)',
  follows: ['power/over-voltage'],
  messages: {
    rises:
      '{supply} gives {open V} with nothing on it; {port}, which it feeds with {volts V} now, stands {limit V} at most.',
  },
  looksAt: {
    load({ part }, { station, trial }, report) {
      const volts = loadVolts(trial.receive, part);
      const limit = part.spec.absMaxV;
      if (!isFeed(part) || volts <= 0 || volts > limit) return;
      // Which supply feeds it has to be traced, which few loads are worth.
      if (!suppliesOf(trial.circuit).some((s) => rises(s.part, limit))) return;
      for (const { part: supply } of feedersOf(trial.circuit, trial.receive.on, part.plus)) {
        if (!rises(supply, limit)) continue;
        const ref = placeOfContact(unitOfPart(part), part.spec.plus);
        const [unit, open] = [unitOfPart(supply), openVolts(supply)];
        report({
          message: 'rises',
          severity: 'doubt',
          at: [ref, { unit }],
          values: { supply: unitName(station, unit), open, port: portName(station, ref), volts, limit },
        });
      }
    },
  },
});

const openVolts = ({ spec }: SupplyPart): number => spec.maxVolts ?? spec.volts;

/** Whether a supply is unregulated and rises above these volts. */
const rises = (supply: SupplyPart, limit: number): boolean =>
  supply.spec.sourceOhms * supply.spec.amps > unregulatedDrop * supply.spec.volts && openVolts(supply) > limit;
