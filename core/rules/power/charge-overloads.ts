import { unitName } from '../../station/parts.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { busiest } from '../../trial/power/battery-life.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

export const chargeOverloads = defineRule({
  id: 'power/charge-overloads',
  severity: 'doubt',
  title: 'Too small for the load and the battery together',
  compares: 'what a supply gives in sending, and what the batteries on it take while they are low, against its rating',
  why: 'After a power cut the battery takes most just when the traffic is heaviest, and the supply gives up.',
  advice: 'Use a larger supply, or limit the current into the battery.',
  source: 'the supply’s rating and the battery’s own charge current',
  follows: ['power/supply-overloaded', 'power/supplies-in-parallel'],
  messages: {
    both: '{supply} is rated {rating rated}; with {battery} low it has to give {demand A}: {load A} and {charge A} into the battery.',
  },
  looksAt: {
    hookup(_, { station, trial }, report) {
      const { circuit } = trial;
      for (const { index, part } of suppliesOf(circuit)) {
        const chargeAmps = part.battery?.chargeAmps;
        if (chargeAmps === undefined) continue;
        const sending = busiest(trial);
        for (const feeder of feedersOf(circuit, sending.on, part.plus)) {
          const { spec, battery } = feeder.part;
          // Whatever the battery gives or takes now, the supply alone feeds the station when it is low.
          const load = Math.max(0, sending.dc.ampsIn(feeder.index) + sending.dc.ampsIn(index));
          if (battery || load + chargeAmps <= spec.amps) continue;
          const unit = unitOfPart(feeder.part);
          report({
            message: 'both',
            severity: 'doubt',
            at: [{ unit }, { unit: unitOfPart(part) }],
            values: {
              supply: unitName(station, unit),
              battery: unitName(station, unitOfPart(part)),
              rating: spec.amps,
              demand: load + chargeAmps,
              load,
              charge: chargeAmps,
            },
            weight: load + chargeAmps,
            touches: [`supply:${unit}`],
          });
        }
      }
    },
  },
});
