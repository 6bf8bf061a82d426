import { describe, expect, it } from 'vitest';
import { type Finding, surveyReport, variablesOf } from '../../core/index.ts';
import { findingWords, suppositionWords, variablesIn } from '../../renderer/stages/budget/suppositions.ts';
import { compare } from '../../renderer/stages/budget/tables/compared.ts';
import { drawStation } from '../stations/draw.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const variables = variablesOf(hut);

describe('what is supposed, in words', () => {
  it.each([
    [{}, ''],
    [{ volts: { 'supply.output': 13.8 }, sendShare: 0.25 }, ''],
    [{ volts: { 'supply.output': 12 } }, 'Bench supply 12.00 V in place of 13.80 V'],
    [
      { watts: { 'transmitter.output': 1.5 }, sendShare: 0.5 },
      'Transmitter 1.5 W in place of 3.02 W; 50 % of the time sending in place of 25 %',
    ],
  ])('%j', (supposed, words) => expect(suppositionWords(variables, supposed, 0.25)).toBe(words));
});

describe('what can be supposed in a hook-up', () => {
  it('leaves out supplies that give nothing and transmitters that nobody keys', () => {
    const station = drawStation({
      units: { supply: 'bench-supply', spare: 'bench-supply', rig: 'cw-transmitter-3w', idle: 'cw-transmitter-3w' },
      cables: ['supply.out > rig.power'],
    });
    const report = surveyReport(station);
    const all = variablesOf(station);
    expect(all.map((v) => v.unit)).toEqual(['supply', 'spare', 'rig', 'idle']);
    expect(variablesIn(all, report, 'as-drawn').map((v) => v.unit)).toEqual(['supply']);
    expect(variablesIn(variables, surveyReport(hut), 'air').map((v) => v.unit)).toEqual(['supply', 'transmitter']);
  });
});

describe('what it does to the findings', () => {
  const finding = (id: string, set: Partial<Finding> = {}) =>
    ({ id, severity: 'fault', title: `Title ${id}`, message: `Message ${id}.`, ...set }) as Finding;
  it.each([
    [[finding('a')], [finding('a')], 'The findings stay the same.'],
    [[], [finding('a')], 'Then a fault shows: Message a.'],
    [[finding('a')], [], '“Title a” goes.'],
    [
      [],
      ['a', 'b', 'c', 'd', 'e'].map((id) => finding(id)),
      'Then a fault shows: Message a. Then a fault shows: Message b. Then a fault shows: Message c. And 2 more.',
    ],
    // Notes, and what follows from another, are not told.
    [[], [finding('a', { severity: 'note' }), finding('b', { causedBy: 'c' })], 'The findings stay the same.'],
  ])('%#', (before, after, words) => expect(findingWords(before, after)).toBe(words));
});

describe('rows side by side', () => {
  const drawn = [
    { hookup: 'a', unit: 'one', amps: 1 },
    { hookup: 'b', unit: 'one', amps: 2 },
  ];
  it('finds the row of the same hook-up and unit, and does without where there is none', () => {
    expect(compare(drawn, [{ hookup: 'a', unit: 'one', amps: 3 }], 'a')).toEqual([
      { row: drawn[0], other: { hookup: 'a', unit: 'one', amps: 3 } },
    ]);
    expect(compare(drawn, undefined, 'b')).toEqual([{ row: drawn[1], other: undefined }]);
  });
});
