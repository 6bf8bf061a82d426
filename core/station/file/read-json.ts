import { type ParseError, parse as parseWithPlaces, printParseErrorCode } from 'jsonc-parser';
import { harmless } from '../schema/text-problem.ts';
import type { Problem } from './problem.ts';

const mostLetters = 20_000_000;
const deepest = 64;

/**
 * The value that a file's text holds, or why it holds none: too large, nested too deep, or not JSON, with the line and
 * column. `what` is what the file should be: `a station file`. Nothing is thrown.
 */
export function readJson(written: string, what: string): { value: unknown } | { problems: Problem[] } {
  // Some editors begin a file with the mark of its encoding.
  const text = written.startsWith('\uFEFF') ? written.slice(1) : written;
  if (text.length > mostLetters) {
    const message = `The file is ${Math.round(text.length / 1e6)} MB; ${what} is at most ${mostLetters / 1e6} MB.`;
    return { problems: [{ place: 'file', message }] };
  }
  const tooDeep = findTooDeep(text);
  if (tooDeep !== null) {
    return {
      problems: [{ place: lineAndColumn(text, tooDeep), message: `Brackets are nested more than ${deepest} deep.` }],
    };
  }
  return parseJson(text);
}

function parseJson(text: string): { value: unknown } | { problems: Problem[] } {
  try {
    return { value: JSON.parse(text) };
  } catch {
    const errors: ParseError[] = [];
    parseWithPlaces(text, errors, { disallowComments: true });
    // One slip makes the reader stumble several times; the first place is where it is.
    const first = errors[0];
    if (!first) return { problems: [{ place: 'file', message: 'This is not JSON.' }] };
    const message = `This is not JSON: ${jsonWords(printParseErrorCode(first.error))}${near(text, first.offset)}.`;
    return { problems: [{ place: lineAndColumn(text, first.offset), message }] };
  }
}

const jsonWords = (code: string): string => code.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

function near(text: string, offset: number): string {
  const piece = text
    .slice(offset, offset + 24)
    .split(/[\r\n]/)[0]
    ?.trim();
  return piece ? ` at “${harmless(piece)}”` : '';
}

/** Where brackets outside strings get too deep, or null. */
function findTooDeep(text: string): number | null {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (inString) {
      if (c === 92) i++;
      else if (c === 34) inString = false;
    } else if (c === 34) inString = true;
    else if (c === 123 || c === 91) {
      if (++depth > deepest) return i;
    } else if (c === 125 || c === 93) depth--;
  }
  return null;
}

function lineAndColumn(text: string, offset: number): string {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return `line ${line}, column ${offset - before.lastIndexOf('\n')}`;
}
