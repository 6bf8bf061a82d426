import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { writeKind } from '../../core/station/file/kind-file.ts';
import { readKind } from '../../core/station/file/read-kind.ts';

const key = shelf.find((item) => item.id === 'straight-key')!.kind;
const text = writeKind({ kind: key, connectors });

describe('a unit kind as a file', () => {
  it.each(shelf)('$id is the same when it is read again', ({ kind }) => {
    const written = writeKind({ kind, connectors });
    const read = readKind(written);
    if (!('kind' in read)) throw new Error(read.problems[0]?.message);
    expect(read.kind).toEqual(kind);
    expect(writeKind(read)).toBe(written);
  });

  it('is read with the mark of an encoding before it', () => {
    expect(readKind(`\uFEFF${text}`)).toEqual(readKind(text));
  });

  it('carries the connectors that it uses and no others', () => {
    expect(Object.keys(JSON.parse(text).connectors)).toEqual(['mono-635-jack']);
  });
});

function broken(change: (json: ReturnType<typeof JSON.parse>) => void): string {
  const json = JSON.parse(text);
  change(json);
  return JSON.stringify(json);
}

describe('reading a broken one', () => {
  it.each<[name: string, text: string, place: string, words: RegExp]>([
    ['not JSON', '{\n  "format": oops', 'line 2, column 13', /not JSON/],
    ['a station', '{"format": "stationwright", "version": 1}', 'format', /not a unit kind file/],
    ['a newer version', broken((k) => Object.assign(k, { version: 2 })), 'version', /version 2.*up to version 1/],
    ['no kind', broken((k) => delete k.kind), 'kind', /missing: an object/],
    [
      'a word for a number',
      broken((k) => Object.assign(k.kind.elements[0], { onOhms: 'few' })),
      'kind.elements[0].onOhms',
      /a number/,
    ],
    [
      'a connector left out',
      broken((k) => delete k.connectors['mono-635-jack']),
      'kind.ports[0].connector',
      /no connector/,
    ],
    [
      'a contact that is not there',
      broken((k) => Object.assign(k.kind.elements[0], { to: 'out.ring' })),
      'kind.elements[0].to',
      /no contact/,
    ],
    [
      'the prototype as a key',
      text.replace('"connectors": {', '"connectors": { "__proto__": {},'),
      'connectors.__proto__',
      /“__proto__” can’t be a name/,
    ],
    [
      'a name that drives a terminal',
      broken((k) => Object.assign(k.kind, { name: '\u001b[2J' })),
      'kind.name',
      /U\+001B/,
    ],
    ['20 MB of nothing', ' '.repeat(20_000_001), 'file', /a unit kind file is at most 20 MB/],
  ])('%s', (_name, given, place, words) => {
    const read = readKind(given);
    if (!('problems' in read)) throw new Error('it was read');
    expect(read.problems.map((p) => p.place)).toContain(place);
    expect(read.problems.find((p) => p.place === place)?.message).toMatch(words);
  });
});
