import { z } from 'zod';
import { asKept, type Limit, limitProblem, limits } from '../../quantity/limits.ts';
import { longestText, type TextSort, textProblem } from './text-problem.ts';

// Compiled parsers need `eval`, which the page policy of the desktop app forbids.
z.config({ jitless: true });

/** The row of the table of limits that a figure of the schema is made of. */
export const limitOf = z.registry<{ limit: Limit }>();

function figure(limit: Limit): z.ZodNumber {
  const { sign, whole, least, most } = limit;
  const number = whole ? z.number().int() : z.number();
  const meant = sign ? number.overwrite((n) => asKept(n, limit)) : number;
  const bounded = meant
    .min(least, limitProblem(Number.NEGATIVE_INFINITY, limit))
    .max(most, limitProblem(Number.POSITIVE_INFINITY, limit));
  return bounded.register(limitOf, { limit });
}

/** Every row of the table of limits as a schema. */
export const figures = Object.fromEntries(
  Object.entries(limits).map(([name, limit]) => [name, figure(limit)]),
) as Record<keyof typeof limits, z.ZodNumber>;

export const { volts, amps, ohms, watts, dbm, decibels, milliseconds, metres, hertz, share } = figures;

/** Characters of an id. */
export const longestId = 80;

export const id = z
  .string()
  .min(1)
  .max(longestId)
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, 'an id is letters, digits, dots, dashes or underscores')
  .check(({ value, issues }) => {
    // Every object of the language has these, so that a list by id would seem to hold them.
    if (value in Object.prototype) issues.push({ code: 'custom', message: `“${value}” can’t be an id.`, input: value });
  });

const written = (sort: TextSort) =>
  z
    .string()
    .max(longestText)
    .check(({ value, issues }) => {
      const message = textProblem(value, sort);
      // What is too long by its characters, as `max` counts them, is said already; by its halves it is not.
      if (message !== undefined && [...value].length <= longestText)
        issues.push({ code: 'custom', message, input: value });
    });

/** A name, a title, a label, a number. */
export const line = written('line');
/** A note. */
export const text = written('text');
