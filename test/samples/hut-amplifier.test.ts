import { describe, expect, it } from 'vitest';
import type { Finding } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import type { Place } from '../../core/station/place.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { sample } from '../stations/samples.ts';

const station = sample('hut-amplifier');
const serious = (from: Station) => survey(from).findings.filter((f) => f.severity !== 'note');
const findings = serious(station);

// RG-58 between 1.5 and 3.7 dB per 100 ft at 10 and 50 MHz, straight on a log-log scale, at 10.12 MHz.
const dbPerM = (1.5 * (3.7 / 1.5) ** (Math.log(1.012) / Math.log(5))) / 30.48;
// 34.8 dBm, 11.3 dB of the amplifier (its most is 46.5 dBm), 0.2 dB in the changeover, three leads of 0.6 m to the meter;
// its 0.1 dB and one more lead to the dummy load.
const atMeter = 34.8 + 11.3 - 0.2 - 1.8 * dbPerM;
const atDummy = atMeter - 0.1 - 0.6 * dbPerM;
const watts = (dbm: number) => 10 ** ((dbm - 30) / 10);
// Amplifier 6.5 A, transmitter 0.62, receiver 0.085, changeover 0.045.
const asked = 6.5 + 0.62 + 0.085 + 0.045;

interface Outgrown {
  what: string;
  rule: string;
  at: Place;
  /** Figures worked out by hand, and how near the finding has to be. */
  values: Record<string, number>;
  within: number;
}

const outgrown: Outgrown[] = [
  {
    what: 'the supply',
    rule: 'power/supply-overloaded',
    at: { unit: 'supply' },
    values: { amps: asked },
    within: 0.001,
  },
  {
    // Of the 4 A at which the supply holds its current the amplifier gets its share; lines take a little of it.
    what: 'the amplifier’s fuse',
    rule: 'power/fuse-will-open',
    at: { unit: 'strip', port: 'four' },
    values: { amps: (4 * 6.5) / asked, rated: 3 },
    within: 0.02,
  },
  {
    what: 'the tuner’s meter',
    rule: 'rf/load-overpowered',
    at: { unit: 'meter', port: 'transmitter' },
    values: { watts: watts(atMeter), limit: 15 },
    within: 0.005,
  },
  {
    what: 'the dummy load',
    rule: 'rf/load-overpowered',
    at: { unit: 'dummy-load', port: 'input' },
    values: { watts: watts(atDummy), limit: 10 },
    within: 0.005,
  },
];

const isAt = (finding: Finding, place: Place) => JSON.stringify(finding.at[0]) === JSON.stringify(place);

describe('the hut with an amplifier', () => {
  it.each(outgrown)('$what no longer does', ({ rule, at, values, within }) => {
    const finding = findings.find((f) => f.rule === rule && isAt(f, at));
    expect(finding).toBeDefined();
    expect(finding?.causedBy).toBeUndefined();
    for (const [name, wanted] of Object.entries(values))
      expect(Math.abs(Number(finding?.values[name]) / wanted - 1), name).toBeLessThan(within);
  });

  it('has nothing else at the top', () => {
    const roots = findings.filter((f) => f.causedBy === undefined).map((f) => [f.rule, f.at[0]]);
    expect(roots).toHaveLength(outgrown.length);
  });
});

/** Figures of a larger unit in each place; a 10 A fuse on 14 AWG, and one more before the strip. */
const larger: Record<string, Record<string, number>> = {
  supply: { 'output.amps': 12, 'output.peakAmps': 14 },
  strip: { 'fuse-four.fuseAmps': 10 },
  meter: { 'line.maxWatts': 100, 'line.scaleWatts': 100 },
  'dummy-load': { 'load.watts': 50, 'load.shortWatts': 100 },
};

const enlarged = (from: Station, unit: string): Station => {
  const had = from.units.find((u) => u.id === unit)?.overrides;
  return edit(from, { type: 'updateUnit', id: unit, set: { overrides: { ...had, ...larger[unit] } } });
};

describe('larger ones in the hut with an amplifier', () => {
  it('all four leave nothing above a note', () => {
    expect(serious(Object.keys(larger).reduce(enlarged, station)).map((f) => f.message)).toEqual([]);
  });
  it.each(Object.keys(larger))('all but that of the %s leave what it is for', (unit) => {
    const left = Object.keys(larger).filter((u) => u !== unit);
    const roots = serious(left.reduce(enlarged, station)).filter((f) => f.causedBy === undefined);
    expect(roots.map((f) => f.at[0])).toEqual([expect.objectContaining({ unit })]);
  });
});
