/** A `line` is a name, a title, a label, a number; a `text` is a note, which may have tabs and line ends. */
export type TextSort = 'line' | 'text';

/** Far beyond what anybody writes by hand, in UTF-16 units. */
export const longestText = 20_000;

const lineEnds = /\r\n|[\t\n\u2028\u2029]/gu;
const forbidden = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/gu;

/**
 * Why a text can't be in a document, as a sentence; undefined where it can. Control characters (the second block of them
 * too) would drive a terminal that a name is printed on; they, halves of a character and U+FFFE or U+FFFF are no part
 * of an XML text (XML 1.0, 2.2), and so of no SVG picture. Marks that turn the direction of what follows are refused as
 * a flag or a list would then read otherwise than it is written; letters that run from right to left need none of them.
 */
export function textProblem(text: string, sort: TextSort): string | undefined {
  if (text.length > longestText) return `It is too long: at most ${longestText.toLocaleString('en-US')} characters.`;
  const [found] = (sort === 'text' ? text.replace(lineEnds, ' ') : text).match(forbidden) ?? [];
  if (found === undefined) return undefined;
  if (sort === 'line' && /[\t\n\r\u2028\u2029]/u.test(found)) return 'It has to be on one line, without tabs.';
  const code = (found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return `It holds a character that can’t be seen and does harm, U+${code}: leave it out.`;
}

/** A text with a mark in place of every character that may not be in a document, so that it can be told nevertheless. */
export const harmless = (text: string): string => text.replace(forbidden, '\uFFFD');
