import type { WholeKind } from '../station/file/kind-file.ts';
import { remember } from '../station/remember.ts';
import { type UnitGroup, unitGroups } from '../station/schema/unit-kind.ts';
import { connectors } from './connectors.ts';
import { type ShelfKind, shelf } from './kinds/index.ts';

export interface ShelfGroup {
  readonly id: UnitGroup;
  readonly name: string;
  readonly kinds: readonly ShelfKind[];
}

/** The headings of the shelf. */
export const groupNames: Record<UnitGroup, string> = {
  power: 'Power',
  sending: 'Sending',
  listening: 'Listening',
  changeover: 'Antenna changeover',
  rf: 'In the antenna line',
  keying: 'Keying',
  audio: 'Audio',
  computer: 'Computer',
  earth: 'Earth',
};

/** Kinds under the headings of the shelf; headings without kinds are left out. */
export const groupKinds = (kinds: readonly ShelfKind[]): readonly ShelfGroup[] =>
  unitGroups
    .map((id) => ({ id, name: groupNames[id], kinds: kinds.filter((k) => k.kind.group === id) }))
    .filter((group) => group.kinds.length > 0);

/** The whole shelf under its headings. */
export const shelfGroups: readonly ShelfGroup[] = groupKinds(shelf);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}.]+/gu, ' ')
    .trim();

/**
 * Kinds that have every word of the text at the start of one of theirs: in the name, summary, trade words, heading or
 * connectors. Those with it in their name come first; all of them for an empty text. Kinds of the user's own bring
 * their connectors along.
 */
export function searchKinds<T extends ShelfKind & Partial<WholeKind>>(kinds: readonly T[], text: string): readonly T[] {
  const words = plain(text).split(' ').filter(Boolean);
  const has = (place: string) => words.every((word) => ` ${place}`.includes(` ${word}`));
  const found = kinds.filter((item) => has(wordsOf(item).all));
  const isCalledSo = (item: T) => has(wordsOf(item).name);
  return [...found.filter(isCalledSo), ...found.filter((item) => !isCalledSo(item))];
}

/** The same for the whole shelf. */
export const searchShelf = (text: string): readonly ShelfKind[] => searchKinds(shelf, text);

const wordsOf = remember(({ kind, connectors: own }: ShelfKind & Partial<WholeKind>) => {
  const { name, summary, words = [], group, ports } = kind;
  const plugs = ports.map((port) => (own ?? connectors)[port.connector]?.name ?? '');
  return { name: plain(name), all: plain([name, summary, ...words, groupNames[group], ...plugs].join(' ')) };
});
