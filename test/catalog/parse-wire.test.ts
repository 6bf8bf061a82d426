import { describe, expect, it } from 'vitest';
import { parseWire } from '../../core/catalog/wire/parse-wire.ts';
import { awgDiameterMm } from '../../core/catalog/wire/wire.ts';

describe('a wire size as people type it', () => {
  it.each([
    ['AWG 16', { awg: 16 }],
    ['awg16', { awg: 16 }],
    ['16 AWG', { awg: 16 }],
    ['#12', { awg: 12 }],
    ['18 ga', { awg: 18 }],
    ['0 AWG', { awg: 0 }],
    ['2/0 AWG', { awg: -1 }],
    ['AWG 4/0', { awg: -3 }],
    ['1.5 mm2', { mm2: 1.5 }],
    ['1,5 mm²', { mm2: 1.5 }],
    ['.75mm2', { mm2: 0.75 }],
    ['2.5 sq mm', { mm2: 2.5 }],
  ])('%s', (text, wire) => expect(parseWire(text)).toEqual({ wire }));

  it.each([
    ['', 'Nothing'],
    ['16', 'AWG 16 or 16 mm²'],
    ['thick', '“thick” is not a wire size'],
    ['AWG 99', 'end at AWG 40'],
    ['5/0 AWG', '1/0 to 4/0'],
    ['0 mm2', 'from 0.01'],
    ['9999 mm2', 'to 500'],
  ])('%s is refused with a sentence', (text, words) => {
    const result = parseWire(text);
    expect('problem' in result ? result.problem : '').toContain(words);
  });

  // ASTM B258: No. 0000 is 11.684 mm thick.
  it('4/0 is the gauge that ASTM B258 begins with', () => {
    const result = parseWire('4/0 AWG');
    expect('wire' in result && awgDiameterMm(result.wire.awg ?? 0)).toBeCloseTo(11.684, 3);
  });
});
