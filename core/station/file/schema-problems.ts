import type { z } from 'zod';
import { counted, plural } from '../../quantity/counted.ts';
import { type Problem, placeInFile, tellable } from './problem.ts';

/** Beyond this many the rest is counted, not listed. */
const listed = 200;

/** What a schema found wrong with a value read from a file, in sentences, each with its place. */
export const problemsOfSchema = (error: z.ZodError, document: unknown): Problem[] =>
  error.issues.flatMap((issue) => problemsOfIssue(issue, document));

function problemsOfIssue(issue: z.core.$ZodIssue, document: unknown): Problem[] {
  const place = placeInFile(issue.path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      place: placeInFile([...issue.path, key]),
      message: `“${key}” is not known here.`,
    }));
  }
  if (issue.code === 'invalid_key')
    return issue.issues.map((inner) => ({ place, message: wordsFor(inner, issue.path.at(-1)) }));
  return [{ place, message: wordsFor(issue, valueAt(document, issue.path)) }];
}

const valueAt = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], document);

function wordsFor(issue: z.core.$ZodIssue, value: unknown): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'number' ? issue.message : 'It must not be empty.';
    case 'too_big':
      return issue.origin === 'number' ? issue.message : `It is too long: at most ${issue.maximum}.`;
    case 'invalid_type':
      if (value === undefined) return `It is missing: ${article(issue.expected)} belongs here.`;
      return value === Number.POSITIVE_INFINITY
        ? 'It is too large for a number.'
        : `It has to be ${article(issue.expected)}.`;
    case 'invalid_value':
      return `It has to be ${issue.values.map((v) => JSON.stringify(v)).join(' or ')}.`;
    case 'invalid_union':
      return 'It is none of the kinds that are known here.';
    case 'custom':
      return issue.message;
    default:
      return `${issue.message.charAt(0).toUpperCase()}${issue.message.slice(1)}.`;
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

/** The first of many problems, each so that it can be told, and how many more there are. */
export function shorten(problems: Problem[]): Problem[] {
  const told = problems.slice(0, listed).map(tellable);
  const more = problems.length - listed;
  if (more <= 0) return told;
  return [...told, { place: 'file', message: `There ${plural(more, 'is', 'are')} ${counted(more, 'more problem')}.` }];
}
