import { formatDecimals } from '../../quantity/format.ts';
import { unitName } from '../../station/parts.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { batteryLife } from '../../trial/power/battery-life.ts';
import { defineRule } from '../rule.ts';

export const batteryTooSmall = defineRule({
  id: 'power/battery-too-small',
  severity: 'doubt',
  title: 'The battery does not last',
  compares:
    'the hours that a battery lasts at the plan’s average current, and the voltage in sending as it empties, against the plan',
  why: 'The receiver plays on long after the transmitter has begun to quit at every key-down: what is left in the battery is of no use.',
  advice: 'A larger battery, a thicker lead, less power or less sending; or change the plan’s hours.',
  source:
    'Peukert’s law at the average current by mode and share of sending; rest voltages of the chemistry; the units’ own lowest voltages',
  follows: ['power/under-voltage', 'power/short-circuit', 'power/reversed-polarity', 'power/return-missing'],
  messages: {
    hours: '{battery} lasts {hours} hours at {amps A} on average; the plan asks for {plan} hours.',
    quits:
      '{battery} lasts {hours} hours until {unit} quits in sending with {left} Ah still in it; the plan asks for {plan} hours.',
  },
  looksAt: {
    hookup(_, { station, trial }, report) {
      for (const supply of suppliesOf(trial.circuit)) {
        const life = batteryLife(station, trial, supply);
        if (!life || life.usableHours >= life.planHours || life.averageAmps <= 0) continue;
        const unit = unitOfPart(supply.part);
        const early = life.quits !== null && life.hours >= life.planHours;
        report({
          message: early ? 'quits' : 'hours',
          severity: 'doubt',
          at: [{ unit }],
          values: {
            battery: unitName(station, unit),
            hours: formatDecimals(early ? life.usableHours : life.hours, 1),
            amps: life.averageAmps,
            plan: String(life.planHours),
            unit: life.quits === null ? '' : unitName(station, life.quits),
            left: formatDecimals(life.unusableAh, 1),
          },
          weight: -life.usableHours,
          touches: [`supply:${unit}`],
        });
      }
    },
  },
});
