import { describe, expect, it } from 'vitest';
import { longestText, textProblem } from '../../core/station/schema/text-problem.ts';

const rows: [name: string, text: string, line: RegExp | null, note: RegExp | null][] = [
  ['letters of any tongue', 'Gerät №1 – 受信機 مستقبل 📻', null, null],
  ['marks that belong to right-to-left writing', 'א\u200Eב\u200Fג', null, null],
  ['a tab', 'a\tb', /one line, without tabs/, null],
  ['a line end', 'a\nb', /one line/, null],
  ['a line end of another system', 'a\r\nb', /one line/, null],
  ['a line separator', 'a\u2028b', /one line/, null],
  ['a carriage return alone, which writes over a line on a terminal', 'a\rb', /one line/, /U\+000D/],
  ['an escape', '\u001B[2J', /U\+001B/, /U\+001B/],
  ['a null', '\u0000', /U\+0000/, /U\+0000/],
  ['delete', '\u007F', /U\+007F/, /U\+007F/],
  ['a control of the second block', '\u009B2J', /U\+009B/, /U\+009B/],
  ['half a character', 'a\uD83D', /U\+D83D/, /U\+D83D/],
  ['the other half', '\uDCFBa', /U\+DCFB/, /U\+DCFB/],
  ['no character', '\uFFFE', /U\+FFFE/, /U\+FFFE/],
  ['a turn of direction', 'fuse \u202E05', /U\+202E/, /U\+202E/],
  ['an isolate', '\u2066a\u2069', /U\+2066/, /U\+2066/],
  ['too much', 'a'.repeat(longestText + 1), /at most 20,000/, /at most 20,000/],
  ['just enough', 'a'.repeat(longestText), null, null],
];

describe('what a text may hold', () => {
  it.each(rows)('%s', (_name, text, line, note) => {
    for (const [sort, words] of [['line', line] as const, ['text', note] as const]) {
      const problem = textProblem(text, sort);
      if (words) expect(problem).toMatch(words);
      else expect(problem).toBeUndefined();
      if (problem) expect(problem).toMatch(/^[A-Z].*\.$/);
    }
  });
});
