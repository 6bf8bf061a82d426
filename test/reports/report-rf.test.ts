import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { sampleReport } from '../stations/samples.ts';

describe('where the power goes, in the hut on its dummy load', () => {
  const [dummy] = sampleReport('hut').rf;
  it('port by port from the transmitter to the load', () => {
    expect(dummy?.stages.map((s) => s.by)).toEqual(['', 'R1', 'Changeover', 'R2', 'Meter', 'R4']);
    // 34.8 dBm less 0.2 dB of relay, 0.1 dB of meter and three cables of some hundredths.
    expect(10 * Math.log10((dummy?.ends[0]?.watts ?? 0) * 1000)).toBeCloseTo(34.8 - 0.3 - 0.08, 1);
    for (const stage of dummy?.stages ?? []) expect(stage.swr).toBeCloseTo(1, 6);
  });
  it('a load has no harmonics to radiate and no distance to keep', () => {
    expect(dummy?.ends[0]).toMatchObject({ role: 'termination', harmonics: [], keepM: null });
  });
});

/** 100 W at −35 dBc on a dipole, with a filter or without. */
const onAir = (rejection: { fromHz: number; db: number }[] | null) =>
  surveyReport(
    drawStation({
      units: {
        supply: 'switch-mode-supply',
        rig: { kind: 'transceiver-100w', overrides: { 'output.harmonicsDbc': -35 } },
        filter: {
          made: made({ a: ['rf', 'uhf-jack'], b: ['rf', 'uhf-jack'] }, [
            { id: 'path', type: 'rfPath', a: 'a', b: 'b', lossDb: 0.5, ...(rejection && { rejection }) },
          ]),
        },
        dipole: { kind: 'dipole', overrides: { 'wire.ohms': 50, 'wire.reactance': 0 } },
      },
      cables: [
        'supply.out > rig.power',
        ['rig.antenna > filter.a', { lengthM: 0 }],
        ['filter.b > dipole.feed', { lengthM: 0 }],
      ],
      plan: { frequencyHz: 14_060_000, duty: 0.4, sendShare: 0.5 },
    }),
  ).rf[0]?.ends[0];

describe('harmonics at the antenna', () => {
  it('−35 dBc of 100 W is 8 dB over 97.307(d), which asks for 43 dB', () => {
    const [second, third] = onAir(null)?.harmonics ?? [];
    expect(second?.dbm).toBeCloseTo(50 - 35 - 0.5, 6);
    expect(second?.part97MarginDb).toBeCloseTo(-8, 6);
    expect(third?.order).toBe(3);
  });
  it('a filter of 40 dB from 25 MHz on takes 39.5 dB more from both than from the carrier', () => {
    const [second, third] = onAir([{ fromHz: 25e6, db: 40 }])?.harmonics ?? [];
    expect(second?.part97MarginDb).toBeCloseTo(-8 + 39.5, 6);
    expect(third?.part97MarginDb).toBeCloseTo(-8 + 39.5, 6);
  });
  it('of two bands the higher one counts where it is reached', () => {
    const [second, third] =
      onAir([
        { fromHz: 25e6, db: 20 },
        { fromHz: 40e6, db: 50 },
      ])?.harmonics ?? [];
    expect(second?.part97MarginDb).toBeCloseTo(-8 + 19.5, 6);
    expect(third?.part97MarginDb).toBeCloseTo(-8 + 49.5, 6);
  });
});

it('the distance to keep is that of OET Bulletin 65 for the average power at the antenna', () => {
  const end = onAir(null);
  // 100 W less half a decibel, 40 % keying, half of the time; 2.15 dBi over common ground; 180/f² mW/cm² for anyone.
  const average = 100 * 10 ** -0.05 * 0.4 * 0.5;
  expect(end?.keepM?.averageWatts).toBeCloseTo(average, 6);
  const milliwatts = average * 1000 * 10 ** 0.215 * 2.56;
  expect(end?.keepM?.uncontrolled).toBeCloseTo(Math.sqrt(milliwatts / (4 * Math.PI * (180 / 14.06 ** 2))) / 100, 6);
});

describe('the staircase from transmitter to load', () => {
  const [dummy] = sampleReport('hut').rf;
  it('is 34.8 dBm, less 0.2 dB of relay and 0.1 dB of meter, cable by cable down to the load', () => {
    const stairs = dummy?.staircase ?? [];
    expect(stairs.map((s) => s.name)).toEqual(['Transmitter', 'R1', 'Changeover', 'R2', 'Meter', 'R4', 'Dummy load']);
    expect(stairs[0]?.dbm).toBeCloseTo(34.8, 9);
    expect(stairs.find((s) => s.name === 'Changeover')?.lossDb).toBeCloseTo(0.2, 6);
    expect(stairs.find((s) => s.name === 'Meter')?.lossDb).toBeCloseTo(0.1, 6);
    stairs.forEach((stair, i) => {
      if (i > 0) expect(stair.dbm).toBeCloseTo((stairs[i - 1]?.dbm ?? 0) - stair.lossDb, 9);
      expect(stair.watts).toBeCloseTo(10 ** (stair.dbm / 10 - 3), 9);
    });
    expect(stairs.at(-1)?.watts).toBeCloseTo(dummy?.ends[0]?.watts ?? 0, 9);
  });
  it('on an antenna of 100 Ω (SWR 2) a ninth is sent back: 0.51 dB', () => {
    const station = drawStation({
      units: {
        supply: 'switch-mode-supply',
        rig: 'transceiver-100w',
        dipole: { kind: 'dipole', overrides: { 'wire.ohms': 100, 'wire.reactance': 0 } },
      },
      cables: ['supply.out > rig.power', ['rig.antenna > dipole.feed', { lengthM: 0 }]],
      plan: { frequencyHz: 14_060_000 },
    });
    const [rf] = surveyReport(station).rf;
    const mismatch = rf?.staircase[1];
    expect(mismatch?.kind).toBe('mismatch');
    expect(mismatch?.lossDb).toBeCloseTo(-10 * Math.log10(8 / 9), 6);
    expect(rf?.staircase.at(-1)).toMatchObject({ kind: 'end', name: 'dipole' });
    expect(rf?.staircase.at(-1)?.watts).toBeCloseTo((100 * 8) / 9, 3);
  });
});
