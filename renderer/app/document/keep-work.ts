import { createStore } from 'zustand/vanilla';
import { writeStation } from '../../../core/index.ts';
import type { NotDone } from '../../shell/bridge.ts';
import type { KeptWork, WorkToKeep } from '../../shell/kept/kept-work.ts';
import { documentStore, isEdited, type OpenDocument } from '../../store/document.ts';

// With the writing itself it stays under a second; at every change it would be in the way of a drag.
const waitMs = 500;

/** A sentence that says why unsaved work can't be kept; null while it can. */
export const keepingStore = createStore<{ problem: string | null }>(() => ({ problem: null }));

export const reportKeeping = (problem: NotDone | null) => keepingStore.setState({ problem: problem?.error ?? null });

/** Keeps the document outside its file, half a second after each change, for as long as it has changes that are not in there. */
export function keepWork(work: KeptWork) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy = false;
  let late = false;
  const settle = async () => {
    clearTimeout(timer);
    timer = undefined;
    late = busy;
    if (busy) return;
    busy = true;
    await keepOrForget(work);
    busy = false;
    if (late) void settle();
  };
  documentStore.subscribe((state) => {
    if (!isEdited(state)) void settle();
    else timer ??= setTimeout(settle, waitMs);
  });
  // A page that goes out of sight may not come back.
  document.addEventListener('visibilitychange', () => document.hidden && timer !== undefined && void settle());
  // Before the question whether to leave, too: what is begun as late as when the page goes may not be ended.
  for (const leaving of ['beforeunload', 'pagehide'])
    window.addEventListener(leaving, () => timer !== undefined && void settle());
}

async function keepOrForget(work: KeptWork) {
  const state = documentStore.getState();
  try {
    if (isEdited(state)) reportKeeping(await work.keep(workOf(state)));
    else await work.forget();
  } catch (error) {
    // A fault of ours; the keeping goes on with the next change.
    reportKeeping({ error: `Unsaved work is not kept: ${error instanceof Error ? error.message : String(error)}.` });
  }
}

function workOf({ history: { station }, file }: OpenDocument): WorkToKeep {
  const about = { title: station.title, units: station.units.length, cables: station.cables.length, file };
  return { text: writeStation(station), about };
}
