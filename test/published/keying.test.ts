import { describe, expect, it } from 'vitest';
import { ditMs } from '../../core/quantity/dit-ms.ts';
import { checkRows, type Row } from './rows.ts';

/** A dash is three dots, a gap inside a character one, between characters three, between words seven. */
const keyingTimes = (dotMs: number) => ({
  dashMs: 3 * dotMs,
  elementGapMs: dotMs,
  characterGapMs: 3 * dotMs,
  wordGapMs: 7 * dotMs,
});
const ratios = 'Recommendation ITU-R M.1677-1 (10/2009), part I, section 2: 3, 1, 3 and 7 dots; dot 1200 / WPM';

/** `[WPM, dot, dash, character gap, word gap]` in milliseconds. */
const speeds: readonly (readonly [number, string, string, string, string])[] = [
  [5, '240.0', '720.0', '720.0', '1680.0'],
  [8, '150.0', '450.0', '450.0', '1050.0'],
  [10, '120.0', '360.0', '360.0', '840.0'],
  [12, '100.0', '300.0', '300.0', '700.0'],
  [13, '92.3', '276.9', '276.9', '646.2'],
  [15, '80.0', '240.0', '240.0', '560.0'],
  [18, '66.7', '200.0', '200.0', '466.7'],
  [20, '60.0', '180.0', '180.0', '420.0'],
  [22, '54.5', '163.6', '163.6', '381.8'],
  [25, '48.0', '144.0', '144.0', '336.0'],
  [28, '42.9', '128.6', '128.6', '300.0'],
  [30, '40.0', '120.0', '120.0', '280.0'],
  [35, '34.3', '102.9', '102.9', '240.0'],
  [40, '30.0', '90.0', '90.0', '210.0'],
  [60, '20.0', '60.0', '60.0', '140.0'],
];
checkRows(
  'Morse times, ms',
  speeds.flatMap(([wpm, dot, dash, characterGap, wordGap]): Row[] => {
    const times = keyingTimes(ditMs(wpm));
    return [
      { name: `${wpm} WPM, dot and element gap`, given: times.elementGapMs, printed: dot, source: ratios },
      { name: `${wpm} WPM, dash`, given: times.dashMs, printed: dash, source: ratios },
      { name: `${wpm} WPM, character gap`, given: times.characterGapMs, printed: characterGap, source: ratios },
      { name: `${wpm} WPM, word gap`, given: times.wordGapMs, printed: wordGap, source: ratios },
    ];
  }),
);

describe('the word PARIS', () => {
  const characters = ['.--.', '.-', '.-.', '..', '...'];
  it('takes 3 s at 20 words a minute, its word gap included: 50 dots of 60 ms (ITU-R M.1677-1 ratios)', () => {
    const dot = ditMs(20);
    const { dashMs, elementGapMs, characterGapMs, wordGapMs } = keyingTimes(dot);
    const elements = (character: string) =>
      [...character].reduce((ms, element) => ms + (element === '.' ? dot : dashMs), 0) +
      (character.length - 1) * elementGapMs;
    const ms = characters.reduce((sum, character) => sum + elements(character), 0);
    expect(ms + (characters.length - 1) * characterGapMs + wordGapMs).toBeCloseTo(3000, 9);
  });
  it('at 60 words a minute 4 ms over and 4 ms back leave 12 ms to listen between dots (calculation: 20 - 8)', () => {
    expect(keyingTimes(ditMs(60)).elementGapMs - 4 - 4).toBeCloseTo(12, 9);
  });
});
