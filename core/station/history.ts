import { type Change, changeName, edit } from './edit.ts';
import type { Station } from './schema/schema.ts';

interface Step {
  readonly name: string;
  readonly before: Station;
}

/**
 * A document with the steps that led to it. Steps keep whole documents: they are plain data that share all that did
 * not change, so this is as small as a list of differences and undo is exact.
 */
export interface History {
  readonly station: Station;
  readonly past: readonly Step[];
  readonly future: readonly { readonly name: string; readonly after: Station }[];
}

/** A history that begins with this station. */
export const startHistory = (station: Station): History => ({ station, past: [], future: [] });

/** The change made, as one step; a change that changes nothing is no step. */
export function recordChange(history: History, change: Change): History {
  const station = edit(history.station, change);
  if (JSON.stringify(station) === JSON.stringify(history.station)) return history;
  return { station, past: [...history.past, { name: changeName(change), before: history.station }], future: [] };
}

/** Another station in its place, as one step: what was there comes back by undoing it. */
export const replaceStation = ({ station, past }: History, other: Station, name: string): History => ({
  station: other,
  past: [...past, { name, before: station }],
  future: [],
});

/** One step back; the same history where there is none. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  const future = [{ name: step.name, after: history.station }, ...history.future];
  return { station: step.before, past: history.past.slice(0, -1), future };
}

/** One step forward again; the same history where there is none. */
export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (!step) return history;
  return { station: step.after, past: [...history.past, { name: step.name, before: history.station }], future };
}

/** The history with this many of its steps done: 0 is where it began. The same history where it is there already. */
export function goTo(history: History, done: number): History {
  let there = history;
  while (there.past.length > Math.max(0, done)) there = undo(there);
  while (there.past.length < done && there.future.length > 0) there = redo(there);
  return there;
}
