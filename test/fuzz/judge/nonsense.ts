import type { ReportText } from '../../stations/every-report.ts';
import { whatIsWrongWithXml } from './xml.ts';

/** What no text for a reader may hold, and what to call it. */
const never: readonly (readonly [what: string, pattern: RegExp])[] = [
  ['no number', /\bNaN\b/],
  ['an endless number', /Infinity|∞/],
  ['a value that is not there', /\bundefined\b/],
  ['an object without words', /\[object /],
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  ['a control character', /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/],
  ['half a character', /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/],
];

/** In sentences, and in tables to be read. */
const notInWords: readonly (readonly [what: string, pattern: RegExp])[] = [
  ['a placeholder', /\{\w+( [^ }]+)?\}/],
  ['“null”', /\bnull\b/],
  ['less than nothing', /(?<![\w.+–])[-−](?!0(?:\.0+)? )\d[\d.,]* (?:k?m|mm|cm|h|Hz|kHz|MHz|k?W|mW)\b/],
];

/**
 * What is nonsense in a report, in a few words with the piece of text around it; nothing where all is well. `given` is
 * the document's own text: what it says itself, its reports may repeat.
 */
export function nonsenseIn({ name, text }: ReportText, given: string): string[] {
  const found = [...never, ...(isForReading(name) ? notInWords : [])].flatMap(([what, pattern]) => {
    const match = pattern.exec(text);
    return match && !pattern.test(given) ? [`${what}: ${around(text, match.index)}`] : [];
  });
  if (name.startsWith('finding ') && text.split('\n').some((line) => line.trim() === '') && !/\\n/.test(given))
    found.push(`an empty sentence: ${around(text, 0)}`);
  if (name.endsWith('.svg')) found.push(...whatIsWrongWithXml(text));
  if (name.endsWith(' --json')) found.push(...whatIsWrongWithJson(text));
  return found.map((what) => `${name}: ${what}`);
}

/** Not data for programs, in which null and a number below nothing have their meaning. */
const isForReading = (name: string): boolean =>
  !/--|^file$|^survey$|^power-up$|^failure study$|^variables$|\.svg$/.test(name);

export const around = (text: string, at: number): string =>
  JSON.stringify(text.slice(Math.max(0, at - 60), at + 60)).slice(1, -1);

function whatIsWrongWithJson(text: string): string[] {
  try {
    JSON.parse(text);
    return [];
  } catch (error) {
    return [`no JSON: ${(error as Error).message}`];
  }
}
