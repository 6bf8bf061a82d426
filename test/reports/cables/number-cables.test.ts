import { describe, expect, it } from 'vitest';
import { type NumberScheme, numberCables } from '../../../core/reports/cables/number-cables.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';

/** A supply right of the transmitter that it feeds, a meter below; drawn in another order than they stand. */
const drawn = drawStation({
  units: { meter: 'swr-meter', supply: 'bench-supply', transmitter: 'cw-transmitter-3w', tuner: 'manual-tuner' },
  cables: [
    ['meter.antenna > tuner.transmitter', { number: 'R9' }],
    ['supply.out > transmitter.power', { number: 'main' }],
    ['transmitter.antenna > meter.transmitter', { number: 'R1' }],
  ],
});
const places: Record<string, [number, number]> = {
  transmitter: [0, 0],
  supply: [400, 0],
  meter: [0, 300],
  tuner: [200, 0],
};
const station: Station = {
  ...drawn,
  units: drawn.units.map((u) => ({ ...u, position: { x: places[u.id]![0], y: places[u.id]![1] } })),
};
const [toTuner, power, toMeter] = station.cables.map((c) => c.id) as [string, string, string];

const numbers = (s: Station, scheme: NumberScheme, ids?: string[]) => {
  const after = edit(s, numberCables(s, scheme, ids));
  return Object.fromEntries(after.cables.map((c) => [c.id, c.number]));
};
const lock = (s: Station, id: string, number: string) =>
  edit(s, { type: 'updateCable', id, set: { number, numberLocked: true } });

describe('cables are numbered', () => {
  it.each([
    {
      name: 'by class in the drawing’s order: left to right, then down',
      scheme: { by: 'class', order: 'drawing', from: 1 },
      expect: { [toMeter]: 'R1', [toTuner]: 'R2', [power]: 'D1' },
    },
    {
      name: 'by class in the order of the list',
      scheme: { by: 'class', order: 'list', from: 1 },
      expect: { [toTuner]: 'R1', [power]: 'D1', [toMeter]: 'R2' },
    },
    {
      name: 'in one running row from a number on',
      scheme: { by: 'running', order: 'drawing', from: 10 },
      expect: { [toMeter]: '10', [toTuner]: '11', [power]: '12' },
    },
    {
      name: 'by the unit that they come from',
      scheme: { by: 'unit', order: 'drawing', from: 1 },
      expect: { [toMeter]: 'TR-1', [toTuner]: 'ME-1', [power]: 'SU-1' },
    },
  ] as { name: string; scheme: NumberScheme; expect: Record<string, string> }[])(
    '$name',
    ({ scheme, expect: wanted }) => expect(numbers(station, scheme)).toEqual(wanted),
  );

  it('a locked number stays and no other cable gets it', () => {
    const locked = lock(station, toTuner, 'R1');
    expect(numbers(locked, { by: 'class', order: 'drawing', from: 1 })).toEqual({
      [toTuner]: 'R1',
      [toMeter]: 'R2',
      [power]: 'D1',
    });
  });
  it('those not named keep theirs', () =>
    expect(numbers(station, { by: 'class', order: 'list', from: 1 }, [toTuner])).toEqual({
      // R1 is taken by the cable that is not named.
      [toTuner]: 'R2',
      [power]: 'main',
      [toMeter]: 'R1',
    }));
  it('what is numbered right already is not touched', () => {
    const change = numberCables(sample('hut'), { by: 'class', order: 'list', from: 1 });
    expect(change).toMatchObject({ type: 'all', changes: [] });
  });
  it('never twice the same, on both samples and in every scheme', () => {
    for (const name of ['hut', 'hut-first-draft'] as const) {
      for (const by of ['class', 'unit', 'running'] as const) {
        const all = Object.values(numbers(lock(sample(name), 'r2', '3'), { by, order: 'drawing', from: 1 }));
        expect(new Set(all).size, `${name} ${by}`).toBe(all.length);
        expect(all).toContain('3');
      }
    }
  });
});

describe('a first number that is none', () => {
  it.each([1e17, 2 ** 53, Number.POSITIVE_INFINITY, Number.NaN, -5, 1.5])('%d ends, with whole numbers', (from) => {
    const locked = lock(station, power, `D${from}`);
    for (const number of Object.values(numbers(locked, { by: 'class', order: 'drawing', from }, [toTuner, toMeter])))
      expect(number === `D${from}` || /^R\d{1,7}$/.test(number)).toBe(true);
    const both = numbers(lock(station, toTuner, `R${from}`), { by: 'class', order: 'drawing', from });
    expect(new Set(Object.values(both)).size).toBe(3);
  });
});
