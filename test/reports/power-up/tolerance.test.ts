import { describe, expect, it } from 'vitest';
import { isOff, judgeReading } from '../../../core/reports/power-up/judge-reading.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { sample } from '../../stations/samples.ts';
import { readingsOf, stepsToRead, withOwn } from './read-steps.ts';

const hut = sample('hut');
const steps = stepsToRead(hut);

const longer = (station: Station, share: number): Station => ({
  ...station,
  cables: station.cables.map((c) => ({ ...c, lengthM: c.lengthM * share })),
});

/** Stations as they may well be built from the drawing of the hut, within what its figures say. */
const built: [string, Station][] = [
  ['the supply as high as it can be', withOwn(hut, 'supply', { 'output.volts': 14.1 })],
  ['the supply as far below its middle', withOwn(hut, 'supply', { 'output.volts': 13.5 })],
  ['leads cut 15 % longer', longer(hut, 1.15)],
  ['leads cut 10 % shorter', longer(hut, 0.9)],
  [
    'units that draw 5 % more, on the lowest supply, by longer leads',
    longer(
      withOwn(
        withOwn(withOwn(hut, 'supply', { 'output.volts': 13.5 }), 'transmitter', {
          'draw.amount': 0.03675,
          'draw.states.0.amount': 0.651,
        }),
        'receiver',
        { 'draw.amount': 0.08925 },
      ),
      1.15,
    ),
  ],
  [
    'units that draw 5 % less',
    withOwn(withOwn(hut, 'transmitter', { 'draw.amount': 0.03325, 'draw.states.0.amount': 0.589 }), 'receiver', {
      'draw.amount': 0.08075,
    }),
  ],
  ['a transmitter that makes 20 % less', withOwn(hut, 'transmitter', { 'output.dbm': 33.83 })],
];

describe('a reading is right', () => {
  it.each(built)('at every step of a hut with %s', (_, station) => {
    const read = readingsOf(station);
    const off = steps.filter(({ id, expected }) => {
      const value = read.get(id);
      return value !== undefined && isOff(expected, value);
    });
    expect(off.map((s) => s.id)).toEqual([]);
    expect(read.size).toBe(steps.length);
  });
  it('and every range has its own middle', () => {
    for (const { id, expected } of steps)
      if (expected.value !== null) expect(isOff(expected, expected.value), id).toBe(false);
  });
});

describe('a reading is off', () => {
  const expected = (id: string) => steps.find((s) => s.id === id)?.expected as (typeof steps)[number]['expected'];
  it.each([
    ['supply/supply.output/volts', 12.6, 'too low'],
    ['supply/supply.output/volts', 14.6, 'too high'],
    ['unit/receiver/plug', -13.8, 'too low'],
    ['unit/receiver/amps', 0.035, 'too low'],
    ['unit/transmitter/amps', 0.15, 'too high'],
    // 1 Ω in the transmitter's lead takes 0.65 V while it sends (620 mA), and 35 mV in receive: only sending shows it.
    ['dummy/transmitter/transmitter.draw/volts', 13.67 - 0.65, 'too low'],
    ['unit/transmitter/volts', 13.78 - 0.035, 'right'],
    ['lead/d4/through', 5, 'too high'],
    ['lead/d4/across', 100, 'too low'],
    ['feeder/r4', 75, 'too high'],
    ['dummy/transmitter/meter.transmitter/swr', 1.5, 'too high'],
    ['dummy/transmitter/meter.transmitter/watts', 0.5, 'too low'],
  ] as const)('%s of %s is %s', (id, value, verdict) => expect(judgeReading(expected(id), value)).toBe(verdict));

  it('figures that nobody has compared with the unit make a wider range', () => {
    const typical: Station = { ...hut, units: hut.units.map(({ confirmed: _, ...unit }) => unit) };
    const width = (station: Station) => {
      const found = stepsToRead(station).find((s) => s.id === 'unit/transmitter/amps')?.expected;
      return (found?.to ?? 0) - (found?.from ?? 0);
    };
    // A fifth of 120 mA instead of a twentieth, either side, and the meter's 1.5 % and 2 mA.
    expect(width(typical)).toBeGreaterThan(0.048);
    expect(width(hut)).toBeLessThan(0.024);
  });
});
