import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../../core/reports/survey-report.ts';
import { batteryTooSmall } from '../../../core/rules/power/battery-too-small.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A 7 Ah glass-mat battery, full, and a receiver that takes 0.5 A and works down to `minV`. */
const portable = (hoursPerDay: number, minV = 11, ampHours = 7) =>
  drawStation({
    units: {
      battery: {
        made: made(
          { out: ['dc', 'stud-pair'] },
          [
            {
              id: 'cells',
              type: 'battery',
              plus: 'out.plus',
              minus: 'out.minus',
              chemistry: 'agm',
              ampHours,
              charge: 1,
              sourceOhms: 0.01,
              maxVolts: 13,
              cutOffV: 10.5,
              amps: 30,
              peakAmps: 100,
              beyond: 'sags',
            },
          ],
          { isolated: 'all' },
        ),
      },
      radio: {
        made: made({ power: ['dc', 'stud-pair'] }, [{ ...load('power.plus', 'power.minus', 0.5), minV }], {
          isolated: 'all',
        }),
      },
    },
    cables: [['battery.out > radio.power', { lengthM: 1, kind: 'lead-awg-18' }]],
    plan: { hoursPerDay },
  });

// Peukert with k = 1.1: 20 h × (7 Ah / (0.5 A × 20 h))^1.1 = 20 × 0.6755 = 13.5 h.
// 1 m of AWG 18 both ways, 10 mΩ inside and the contacts drop 0.02 to 0.03 V at 0.5 A: 12.1 V at the radio are
// 12.12 to 12.13 V at rest, which is a charge of 0.35 to 0.36 in the table of rest voltages; 0.35 × 7 Ah = 2.45 Ah.
testRule(batteryTooSmall, {
  silent: [
    { name: 'ten hours from thirteen', station: portable(10) },
    { name: 'eight hours from nearly nine', station: portable(8, 12.1) },
    { name: 'twice the battery', station: portable(24, 11, 14) },
  ],
  reported: [
    {
      name: 'a day from thirteen hours',
      station: portable(24),
      message: 'hours',
      severity: 'doubt',
      at: { unit: 'battery' },
      values: { hours: '13.5', amps: 0.5, plan: '24' },
    },
    {
      name: 'a radio that quits at 12.1 V leaves a third unused',
      station: portable(12, 12.1),
      message: 'quits',
      severity: 'doubt',
      at: { unit: 'battery' },
      values: { hours: '8.8', unit: 'radio', left: '2.5' },
    },
  ],
});

describe('a battery in the budget', () => {
  it('lasts as Peukert says, and the average counts the share of sending and of the key', () => {
    const [row] = surveyReport(portable(10)).budget.batteries;
    expect(row?.averageAmps).toBeCloseTo(0.5, 6);
    expect(row?.hours).toBeCloseTo(13.51, 2);
    expect(row?.usableHours).toBeCloseTo(13.51, 1);
    expect(row?.quits).toBeNull();
  });
});
