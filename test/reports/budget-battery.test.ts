import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

/** A 7 Ah glass-mat battery of 10 mΩ and a radio that takes 0.5 A and works down to `minV`. */
const portable = (minV: number, charge = 1, amps = 0.5) =>
  surveyReport(
    drawStation({
      units: {
        battery: {
          made: made(
            { out: ['dc', 'stud-pair'] },
            [
              {
                ...{ id: 'cells', type: 'battery', plus: 'out.plus', minus: 'out.minus', chemistry: 'agm' },
                ...{ ampHours: 7, charge, sourceOhms: 0.01, maxVolts: 13, cutOffV: 10.5, amps: 30, peakAmps: 100 },
                beyond: 'sags',
              },
            ],
            { isolated: 'all' },
          ),
        },
        radio: {
          made: made({ power: ['dc', 'stud-pair'] }, [{ ...load('power.plus', 'power.minus', amps), minV }], {
            isolated: 'all',
          }),
        },
      },
      cables: [['battery.out > radio.power', { lengthM: 1, kind: 'lead-awg-18' }]],
      plan: { hoursPerDay: 10 },
    }),
  ).budget.batteries[0];

// Peukert with k = 1.1: 20 h × (7 Ah / (0.5 A × 20 h))^1.1 = 13.51 h from full. The table of rest voltages of a glass-mat
// battery (from memory): 12.85, 12.6, 12.3, 12.0 and 11.8 V at full, three quarters, half, a quarter and nothing left.
const full = 20 * 0.7 ** 1.1;
const sag = 0.5 * 0.01;

describe('a battery over the operating time', () => {
  it('falls evenly from full to empty, its volts by the table less what it loses inside', () => {
    const course = portable(11)?.course ?? [];
    const rest = [12.85, 12.6, 12.3, 12, 11.8];
    expect(course.map((p) => p.charge)).toEqual([1, 0.75, 0.5, 0.25, 0]);
    course.forEach((point, i) => {
      expect(point.hours).toBeCloseTo((full * i) / 4, 6);
      expect(point.receiveVolts).toBeCloseTo((rest[i] ?? 0) - sag, 6);
      expect(point.sendingVolts).toBeCloseTo((rest[i] ?? 0) - sag, 6);
    });
  });
  it('ends where the radio quits, after the usable hours', () => {
    const row = portable(12.1);
    const last = row?.course.at(-1);
    expect(row?.quits).toBe('radio');
    // 12.12 to 12.13 V at rest are a charge of 0.35 to 0.36.
    expect(last?.charge).toBeCloseTo(0.355, 2);
    expect(last?.hours).toBeCloseTo(row?.usableHours ?? 0, 6);
    expect(row?.course.map((p) => p.charge).slice(0, -1)).toEqual([1, 0.75, 0.5]);
  });
  it('starts at the charge that it has', () => {
    const course = portable(11, 0.6)?.course ?? [];
    expect(course.map((p) => p.charge)).toEqual([0.6, 0.5, 0.25, 0]);
    expect(course.at(-1)?.hours).toBeCloseTo(full * 0.6, 6);
    // A tenth of the charge above the point at a half: 12.3 V and two fifths of 0.3 V.
    expect(course[0]?.receiveVolts).toBeCloseTo(12.42 - sag, 6);
  });
  it('has no course where nothing is drawn: it lasts for ever', () => {
    const row = portable(11, 1, 0);
    expect(row?.course).toEqual([]);
    expect(row?.hours).toBe(Number.POSITIVE_INFINITY);
  });
  it('tells its cut-off and the most that it gives', () => {
    const row = portable(11);
    expect(row?.cutOffV).toBe(10.5);
    expect(row?.peakAmps).toBeCloseTo(0.5, 6);
  });
});
