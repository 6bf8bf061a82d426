import { createStore } from 'zustand/vanilla';
import type { CableFilter, CableSort } from './list/arrange-cables.ts';

export const listTabs = ['list', 'make', 'buy', 'flags'] as const;
export type ListTab = (typeof listTabs)[number];

/** What the sheet of the cables shows; it stays while other stages are looked at, and is not saved. */
interface ListsView {
  readonly tab: ListTab;
  readonly sort: CableSort;
  readonly filter: CableFilter;
  /** The cable whose row is open. */
  readonly open: string | null;
  /** What to make and to buy without cables that are made or tested. */
  readonly leaveOutDone: boolean;
}

export const wholeList: CableFilter = { words: '', class: 'all', status: 'all', hookup: 'all' };

export const listsView = createStore<ListsView>(() => ({
  tab: 'list',
  sort: { by: 'class', down: false },
  filter: wholeList,
  open: null,
  leaveOutDone: false,
}));

const { setState } = listsView;

export const showTab = (tab: ListTab) => setState({ tab });
export const filterBy = (set: Partial<CableFilter>) => setState(({ filter }) => ({ filter: { ...filter, ...set } }));
export const showWholeList = () => setState({ filter: wholeList });
export const openCableRow = (open: string | null) => setState({ open });
export const leaveOutDone = (is: boolean) => setState({ leaveOutDone: is });

/** Sorts by a column; by the same one again, the other way round. */
export const sortBy = (by: CableSort['by']) =>
  setState(({ sort }) => ({ sort: { by, down: sort.by === by ? !sort.down : false } }));
