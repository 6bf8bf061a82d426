import type { Place } from '../../station/place.ts';

/** One thing that a change does, in words, and where that is on the drawing as it is before. */
export interface ChangeLine {
  /** `D4: wiring straight → swapped`, `New cable K4, key lead, from Changeover · mute to Receiver · mute`. */
  readonly words: string;
  readonly at: readonly Place[];
}

/** How a field is called and what it says: empty where it says nothing. */
export type Wording<T> = {
  readonly [K in keyof T]-?: readonly [label: string, say: (value: NonNullable<T[K]>) => string];
};

/** The items of two lists with the same ids, and those of one alone. */
export function pairById<T extends { readonly id: string }>(before: readonly T[], after: readonly T[]) {
  const [old, fresh] = [new Map(before.map((i) => [i.id, i])), new Map(after.map((i) => [i.id, i]))];
  return {
    added: after.filter((i) => !old.has(i.id)),
    removed: before.filter((i) => !fresh.has(i.id)),
    changed: before.flatMap((was): { was: T; is: T }[] => {
      const is = fresh.get(was.id);
      return is && !isSame(was, is) ? [{ was, is }] : [];
    }),
  };
}

/** `fuse 10 A → 2 A` for each field that is not as it was. */
export function fieldWords<T extends object>(wording: Wording<T>, was: Partial<T>, is: Partial<T>): string[] {
  return (Object.keys(wording) as (keyof T)[]).flatMap((field) => {
    if (isSame(was[field], is[field])) return [];
    const [label, say] = wording[field];
    const text = (value: T[keyof T] | undefined) =>
      value === undefined || value === null ? 'none' : say(value as NonNullable<T[keyof T]>) || 'none';
    return [fromTo(label, text(was[field]), text(is[field]))];
  });
}

/** What can't be told apart in its words has changed all the same. */
export const fromTo = (label: string, was: string, is: string): string =>
  was === is ? `${label} changes` : `${label} ${was} → ${is}`;

/** Whether two values would be written alike. What documents share is not looked into. */
export function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null)
    return JSON.stringify(a) === JSON.stringify(b);
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [one, two] = [writtenFields(a), writtenFields(b)];
  return one.length === two.length && one.every(([key, v], i) => key === two[i]?.[0] && isSame(v, two[i]?.[1]));
}

const writtenFields = (value: object): [string, unknown][] => Object.entries(value).filter(([, v]) => v !== undefined);
