import { describe, expect, it } from 'vitest';
import { isOff } from '../../../core/reports/power-up/judge-reading.ts';
import { correctStations } from '../../cases/correct.ts';
import { drawStation } from '../../stations/draw.ts';
import { generateStation } from '../../stations/generate.ts';
import { powerUpSheet } from './power-up-sheet.ts';
import { stepsToRead } from './read-steps.ts';

describe('a sheet of any station', () => {
  it.each([
    ...correctStations.map(({ id, station }) => [id, station] as const),
    ['two positions', generateStation(25)] as const,
  ])('%s: has each step once, and each reading in a range that is one', (_, station) => {
    const ids = powerUpSheet(station).parts.flatMap((p) => p.steps.map((s) => s.id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, expected } of stepsToRead(station)) {
      const { from, to, value } = expected;
      expect(to === null || from <= to, id).toBe(true);
      expect(value === null || !isOff(expected, value), id).toBe(true);
    }
  });
});

it('of a unit whose only supply is inside it has nothing to power up', () =>
  expect(powerUpSheet(drawStation({ units: { clock: 'reference-clock' } })).parts).toEqual([]));

describe('a radio that is all in one', () => {
  const radio = drawStation({
    units: {
      supply: 'switch-mode-supply',
      radio: 'transceiver-100w',
      load: 'dummy-load-100w',
      meter: 'swr-meter-200w',
      pc: 'computer',
    },
    cables: ['supply.out > radio.power', 'radio.antenna > meter.transmitter', 'meter.antenna > load.input'],
  });
  const steps = stepsToRead(radio);
  it('is not pressed before the dummy load: it has no changeover of its own to try', () =>
    expect(powerUpSheet(radio).parts.map((p) => p.id)).not.toContain('lines'));
  it('a computer’s outlets with nothing in them are no supplies of the station', () =>
    expect(steps.filter((s) => s.id.startsWith('supply/')).map((s) => s.id)).toEqual([
      expect.stringMatching(/^supply\/supply\./),
    ]));
  it('100 W less what the lead takes are on the meter', () => {
    const watts = steps.find((s) => s.id.endsWith('/watts'))?.expected.value ?? 0;
    // 0.6 m of RG-58 on 14 MHz: about 6 dB per 100 m.
    expect(watts).toBeCloseTo(100 * 10 ** -0.0036, -1);
  });
});
