import { createStore } from 'zustand/vanilla';
import { readStation, type Station } from '../../../core/index.ts';
import type { KeptEntry, KeptWork } from '../../shell/kept/kept-work.ts';
import { suggestedName } from '../../shell/suggested-name.ts';
import { restoreDocument } from '../../store/document.ts';
import { resetView } from '../../store/view.ts';
import { tell } from '../dialogs/questions.ts';
import { mayReplace } from './document-actions.ts';
import { exportOrTell } from './export-or-tell.ts';
import { reportKeeping } from './keep-work.ts';

/** An entry of the offer; without a station where the reader refuses its text. */
export interface Offered extends KeptEntry {
  readonly station: Station | null;
  /** Why it is refused, by the first thing that is wrong. */
  readonly refusal: string | null;
}

interface OfferState {
  readonly work: KeptWork | null;
  readonly entries: readonly Offered[];
  readonly open: boolean;
}

export const offerStore = createStore<OfferState>(() => ({ work: null, entries: [], open: false }));

const { getState, setState } = offerStore;

/** Looks for what dead windows left and, where there is something, offers it. */
export async function offerKept(work: KeptWork, unasked: boolean) {
  setState({ work });
  const found = await work.list(unasked);
  if ('error' in found) return reportKeeping(found);
  setState({ entries: found.map(judge), open: found.length > 0 });
}

/** Shows the offer again that was put off, with what has come to it since. */
export async function showOffer() {
  const { work } = getState();
  if (work) await offerKept(work, false);
  if (!getState().open) await tell('Nothing to bring back', 'All that was kept is saved, open or thrown away.');
}

export const putOff = () => setState({ open: false });

export const judge = (entry: KeptEntry): Offered => {
  const read = readStation(entry.text);
  if ('station' in read) return { ...entry, station: read.station, refusal: null };
  const [first] = read.problems;
  return { ...entry, station: null, refusal: first ? `${first.place}: ${first.message}` : 'it is empty' };
};

/** Shows an entry as the document that it was, with its file and still to be saved; the others can wait. */
export async function bringBack(entry: Offered) {
  if (await bring(entry)) putOff();
}

export async function bringAllBack() {
  for (const entry of getState().entries) if (entry.station && !(await bring(entry))) return;
  putOff();
}

async function bring(entry: Offered): Promise<boolean> {
  const { work } = getState();
  // Where it gets a window of its own it takes no other's place.
  if (!work || !entry.station || !(work.hasWindows || (await mayReplace()))) return false;
  if (!(await restore(work, entry, entry.station))) return false;
  drop(entry);
  return true;
}

/** Takes an entry over into this window, or has another one do it; a sentence where it can't. */
export async function restore(work: KeptWork, entry: KeptEntry, station: Station): Promise<boolean> {
  const brought = await work.bringBack(entry);
  if (typeof brought !== 'string') {
    await tell('Not brought back', brought.error);
    return false;
  }
  if (brought === 'here') {
    restoreDocument(station, entry.about?.file ?? null);
    resetView();
  }
  return true;
}

export async function throwAway(entry: Offered) {
  const problem = await getState().work?.throwAway(entry);
  if (problem) await tell('Not thrown away', problem.error);
  else drop(entry);
}

/** For what the reader refuses: its text as it is. It stays in the list. */
export const saveAsItIs = (entry: Offered) =>
  exportOrTell(entry.text, entry.about?.file?.name ?? suggestedName(entry.about?.title ?? 'Unsaved work'));

function drop({ id }: Offered) {
  const entries = getState().entries.filter((other) => other.id !== id);
  setState({ entries, open: getState().open && entries.length > 0 });
}
