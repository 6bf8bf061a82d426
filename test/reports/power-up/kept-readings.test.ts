import { describe, expect, it } from 'vitest';
import { nowAndBefore, startOfRound, writeReading } from '../../../core/reports/power-up/kept-readings.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Reading, Station } from '../../../core/station/schema/schema.ts';
import { sample } from '../../stations/samples.ts';
import { stepsToRead } from './read-steps.ts';

const hut = sample('hut');
const step = 'supply/supply.output/volts';
const at = (when: string, value: number, id = step): Reading => ({ step: id, value, unit: 'V', when });
const withReadings = (...readings: Reading[]): Station => ({ ...hut, readings });

describe('the reading in the box, and the one before', () => {
  const station = withReadings(
    at('2025-05-01T09:00:00Z', 13.8),
    at('2026-05-01T09:00:00Z', 13.7),
    at('2024-05-01T09:00:00Z', 13.9),
  );
  it.each([
    ['everything counts', '', 13.7, 13.8],
    ['a round that began this year', '2026-05-01T08:00:00Z', 13.7, 13.8],
    ['a round that has just begun', '2026-06-01T08:00:00Z', undefined, 13.7],
  ])('%s', (_, since, now, before) => {
    const both = nowAndBefore(station, step, since);
    expect(both.now?.value).toBe(now);
    expect(both.before?.value).toBe(before);
  });
  it('another step has none', () =>
    expect(nowAndBefore(station, 'outlet/strip.one', '')).toEqual({ now: null, before: null }));
});

describe('writing down', () => {
  const [first] = stepsToRead(hut).filter((s) => s.id === step);
  if (!first) throw new Error('the hut has a supply');
  const write = (station: Station, value: number, when: string, since: string) =>
    edit(station, writeReading(station, first, { value, when, since }));
  it('in the same round the newer one takes the place of the older', () => {
    const once = write(hut, 13.5, '2026-05-01T09:00:00Z', '2026-05-01');
    const twice = write(once, 13.7, '2026-05-01T09:05:00Z', '2026-05-01');
    expect(twice.readings).toEqual([at('2026-05-01T09:05:00Z', 13.7)]);
  });
  it('what an earlier round read stays', () => {
    const before = withReadings(at('2025-05-01T09:00:00Z', 13.8));
    expect(write(before, 13.7, '2026-05-01T09:00:00Z', '2026-05-01').readings).toHaveLength(2);
  });
});

describe('a round begins', () => {
  it.each([
    ['nowhere without readings', [], ''],
    [
      'with the first of several minutes apart',
      ['2026-05-01T09:00:00Z', '2026-05-01T09:30:00Z'],
      '2026-05-01T09:00:00Z',
    ],
    ['over midnight too', ['2026-05-01T22:00:00Z', '2026-05-02T01:00:00Z'], '2026-05-01T22:00:00Z'],
    ['anew after half a day', ['2026-05-01T09:00:00Z', '2026-05-01T21:30:00Z'], '2026-05-01T21:30:00Z'],
    ['anew a year later', ['2026-05-01T09:00:00Z', '2025-05-01T09:00:00Z'], '2026-05-01T09:00:00Z'],
  ])('%s', (_, times, start) => expect(startOfRound(withReadings(...times.map((t) => at(t, 1))))).toBe(start));
});
