import { createStore } from 'zustand/vanilla';
import { readKind, type WholeKind, writeKind } from '../../core/index.ts';
import { forgetChoice, keepChoice, keptChoice } from '../shell/keep-choice.ts';
import { plainName } from '../shell/plain-name.ts';

/** A unit kind of the user's own, as the shelf has it. */
export interface OwnKind extends WholeKind {
  readonly id: string;
}

interface OwnKindsState {
  readonly kinds: readonly OwnKind[];
  /** What this browser kept and nobody could read, as it was. */
  readonly unreadable: string | null;
  /** A sentence where what is on the shelf could not be kept. */
  readonly problem: string | null;
}

export const ownKindsKey = 'stationwright.kinds';
const unreadableKey = 'stationwright.kinds.unreadable';
const notKept = 'This browser keeps no more: export your kinds as files, or they are gone with this window.';

export const ownKindsStore = createStore<OwnKindsState>(() => ({ kinds: [], unreadable: null, problem: null }));

const { getState, setState } = ownKindsStore;

/** Puts a kind on the shelf, or in place of the one with its id. */
export function keepKind(own: OwnKind) {
  const { kinds } = getState();
  const isThere = kinds.some((k) => k.id === own.id);
  write(isThere ? kinds.map((k) => (k.id === own.id ? own : k)) : [...kinds, own]);
}

export const dropKind = (id: string) => write(getState().kinds.filter((k) => k.id !== id));

export const findOwnKind = (id: string): OwnKind | undefined => getState().kinds.find((k) => k.id === id);

/** `Keyer, blue` gives `own-keyer-blue`, or the next that is free on the shelf and among the `taken`. */
export function freeKindId(name: string, taken: readonly string[]): string {
  const stem = `own-${plainName(name, 50).replace(/-+$/, '') || 'unit'}`;
  const isTaken = (id: string) => taken.includes(id) || findOwnKind(id) !== undefined;
  let id = stem;
  for (let n = 2; isTaken(id); n++) id = `${stem}-${n}`;
  return id;
}

/** The user has what could not be read, or does not want it. */
export function forgetUnreadable() {
  write(getState().kinds);
  forgetChoice(unreadableKey);
  setState({ unreadable: null });
}

/** Takes the kinds out of the browser's store. What can't be read is kept as text, and the rest is there. */
export function loadOwnKinds() {
  const text = keptChoice(ownKindsKey);
  const { kinds, whole } = parse(text ?? '[]');
  if (!whole && text !== null) keepChoice(unreadableKey, text);
  // Where there is no room for a second copy, the window still has it.
  setState({ kinds, unreadable: keptChoice(unreadableKey) ?? (whole ? null : text), problem: null });
}

/** The kinds that can be read; `whole` where all can. */
function parse(text: string): { kinds: OwnKind[]; whole: boolean } {
  try {
    const rows: unknown = JSON.parse(text);
    if (!Array.isArray(rows)) return { kinds: [], whole: false };
    const kinds = rows.flatMap((row): OwnKind[] => {
      const read = readKind(JSON.stringify(row?.file ?? null));
      return 'kind' in read && typeof row.id === 'string' ? [{ id: row.id, ...read }] : [];
    });
    return { kinds, whole: kinds.length === rows.length };
  } catch {
    return { kinds: [], whole: false };
  }
}

function write(kinds: readonly OwnKind[]) {
  const rows = kinds.map(({ id, ...whole }) => ({ id, file: JSON.parse(writeKind(whole)) }));
  const kept = keepChoice(ownKindsKey, JSON.stringify(rows));
  setState({ kinds, problem: kept ? null : notKept });
}
