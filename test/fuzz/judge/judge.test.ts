import { describe, expect, it } from 'vitest';
import { nonsenseIn } from './nonsense.ts';
import { whatIsWrongWithRefusal } from './refusal.ts';
import { whatIsWrongWithXml } from './xml.ts';

describe('nonsense in a report', () => {
  it.each([
    ['finding a/b', 'Too hot\nIt takes NaN W.\nDo less.', 'no number'],
    ['rf', 'R1  Infinity dB', 'an endless number'],
    ['rf --csv', 'R1,undefined', 'a value that is not there'],
    ['check --json', '{"at": "[object Object]"}', 'an object without words'],
    ['flags', 'R1 \u001b[2J', 'a control character'],
    ['flags', 'R1 \ud800', 'half a character'],
    ['finding a/b', 'Too hot\nIt takes {watts W}.\nDo less.', 'a placeholder'],
    ['finding a/b', 'Too hot\n\nDo less.', 'an empty sentence'],
    ['rf', 'Keep everyone −3.2 m away.', 'less than nothing'],
    ['budget', 'it draws -37.0 kW on average', 'less than nothing'],
    ['budget', 'null', '“null”'],
    ['rf --json', '{"rows": [', 'no JSON'],
    ['drawing.svg', '<svg><text>a & b</text></svg>', 'a loose “&”'],
  ])('%s: %j has %s', (name, text, what) =>
    expect(nonsenseIn({ name, text }, '').join()).toContain(`${name}: ${what}`),
  );
  it.each([
    ['finding a/b', 'Too hot\nIt takes 3.0 W.\nDo less.'],
    ['rf', 'R1  −132.4 dBm  -0.5 dB  0 W'],
    ['rf --json', '{"ohms": null, "dropVolts": -0.2}'],
    ['budget', 'from 10–20 m, AWG-14 wire'],
  ])('%s: %j has none', (name, text) => expect(nonsenseIn({ name, text }, '')).toEqual([]));
  it('what the document says itself is none', () =>
    expect(nonsenseIn({ name: 'flags', text: 'NaN box' }, '"name": "NaN box"')).toEqual([]));
});

describe('a refusal', () => {
  it.each([
    [[], 'without any problem'],
    [[{ place: '', message: 'It is missing.' }], 'without a place'],
    [[{ place: 'units', message: 'too small' }], 'not a sentence'],
    [[{ place: `kinds.${'x'.repeat(2000)}`, message: 'It is missing.' }], 'a problem of 2020 characters'],
    [[{ place: 'line 1', message: 'This is not JSON: at “\u0000”.' }], 'a control character'],
  ])('%j is %s', (problems, what) => expect(whatIsWrongWithRefusal(problems).join()).toContain(what));
  it('with a place and a sentence is one', () =>
    expect(whatIsWrongWithRefusal([{ place: 'units[3].name', message: 'It must not be empty.' }])).toEqual([]));
});

describe('well-formed', () => {
  it.each(['<a/>', '<?xml version="1.0" encoding="UTF-8"?>\n<a b="1" c:d="x &amp; y"><e>&#39;</e> text</a>'])(
    '%s',
    (text) => expect(whatIsWrongWithXml(text)).toEqual([]),
  );
  it.each(['<a>', '<a></b>', '</a>', '<a b=1/>', '<a b="1" b="2"/>', '<a b="<"/>', '<a>&nbsp;</a>', '<a', '1 < 2'])(
    'is not: %s',
    (text) => expect(whatIsWrongWithXml(text)).not.toEqual([]),
  );
});
