import { type ParseError, parse as parseWithPlaces, printParseErrorCode } from 'jsonc-parser';
import type { z } from 'zod';
import { type Problem, placeOf } from './problem.ts';
import { findBrokenReferences } from './references.ts';
import { type Station, stationSchema } from './schema.ts';
import { bringUpToDate } from './versions.ts';

/** A station, or every problem that keeps the text from being one. */
export type ReadResult = { station: Station } | { problems: Problem[] };

const largestBytes = 20_000_000;
const deepest = 64;
/** Beyond this many the rest is counted, not listed. */
const listed = 200;

/**
 * Reads the text of a station file. Every problem is reported, each with its place: `line 3, column 9` where the
 * text isn't JSON, `cables[4].lengthM` where a value doesn't fit. Nothing is thrown, however broken the text is.
 */
export function readStation(text: string): ReadResult {
  if (text.length > largestBytes) {
    const message = `The file is ${Math.round(text.length / 1e6)} MB; a station file is at most ${largestBytes / 1e6} MB.`;
    return { problems: [{ place: 'file', message }] };
  }
  const tooDeep = findTooDeep(text);
  if (tooDeep !== null) {
    return {
      problems: [{ place: lineAndColumn(text, tooDeep), message: `Brackets are nested more than ${deepest} deep.` }],
    };
  }
  const json = parseJson(text);
  if ('problems' in json) return json;
  const dated = bringUpToDate(json.value);
  if ('problem' in dated) return { problems: [dated.problem] };
  const parsed = stationSchema.safeParse(dated.document);
  if (!parsed.success)
    return { problems: shorten(parsed.error.issues.flatMap((issue) => problemsOfIssue(issue, dated.document))) };
  const problems = findBrokenReferences(parsed.data);
  return problems.length > 0 ? { problems: shorten(problems) } : { station: parsed.data };
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
  return piece ? ` at “${piece}”` : '';
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

function problemsOfIssue(issue: z.core.$ZodIssue, document: unknown): Problem[] {
  const place = placeOf(issue.path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({ place: placeOf([...issue.path, key]), message: `“${key}” is not known here.` }));
  }
  if (issue.code === 'invalid_key') return [{ place, message: issue.issues[0]?.message ?? 'This name does not fit.' }];
  return [{ place, message: wordsFor(issue, valueAt(document, issue.path)) }];
}

const valueAt = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], document);

function wordsFor(issue: z.core.$ZodIssue, value: unknown): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'number' ? `It has to be at least ${issue.minimum}.` : 'It must not be empty.';
    case 'too_big':
      return issue.origin === 'number'
        ? `It has to be at most ${issue.maximum}.`
        : `It is too long: at most ${issue.maximum}.`;
    case 'invalid_type':
      if (value === undefined) return `It is missing: ${article(issue.expected)} belongs here.`;
      return value === Number.POSITIVE_INFINITY
        ? 'It is too large for a number.'
        : `It has to be ${article(issue.expected)}.`;
    case 'invalid_value':
      return `It has to be ${issue.values.map((v) => JSON.stringify(v)).join(' or ')}.`;
    case 'invalid_union':
      return 'It is none of the kinds that are known here.';
    default:
      return `${issue.message}.`;
  }
}

const typeWords: Record<string, string> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
};

const article = (type: string): string => typeWords[type] ?? `a ${type}`;

function shorten(problems: Problem[]): Problem[] {
  if (problems.length <= listed) return problems;
  return [...problems.slice(0, listed), { place: 'file', message: `and ${problems.length - listed} more problems.` }];
}
