import { placeOfContact, portName } from '../../station/parts.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { loadVolts, unitOfPart, works } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

/** So near to the edge of its range a load is in doubt. */
const edge = 0.03;

export const underVoltage = defineRule({
  id: 'power/under-voltage',
  severity: 'fault',
  title: 'Too few volts',
  compares: 'the voltage at a load in receive and sending against its working range',
  why: 'Below its range a transmitter chirps, resets or makes a dirty signal, often only when it sends.',
  advice: 'Shorten or thicken the lead that drops most, or feed it from a stiffer supply.',
  source: 'the unit’s own working range; in doubt within 3 % of its edge (common practice)',
  follows: ['power/short-circuit', 'power/reversed-polarity', 'power/supply-overloaded', 'power/return-missing'],
  messages: {
    low: '{port} gets {volts V} {moment}; it works from {minV V}.',
    edge: '{port} gets {volts V} {moment}, hardly more than the {minV V} it works from.',
  },
  looksAt: {
    load({ index, part }, { station, trial }, report) {
      // A load that gets nothing to speak of is not powered at all, which is another rule's business.
      const fed = instantsOfPart(trial, index)
        .map(({ name, reach }) => ({ name, reach, volts: loadVolts(reach, part) }))
        .filter(({ volts }) => works(part, volts));
      const { minV } = part.spec;
      const isLow = fed.some(({ volts }) => volts < minV);
      const place = placeOfContact(unitOfPart(part), part.spec.plus);
      for (const { name, reach, volts } of fed) {
        if (volts >= (isLow ? minV : minV * (1 + edge))) continue;
        report({
          message: isLow ? 'low' : 'edge',
          severity: isLow ? 'fault' : 'doubt',
          at: [place],
          values: { port: portName(station, place), volts, minV, moment: momentWords[name] },
          moment: name,
          weight: -volts,
          touches: feedersOf(trial.circuit, reach.on, part.plus).map((s) => `supply:${unitOfPart(s.part)}`),
        });
      }
    },
  },
});
