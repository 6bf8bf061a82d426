import { readStation, writeStation } from '../../../core/index.ts';
import { documentStore, isEdited, restoreDocument } from '../../store/document.ts';
import { ask } from '../dialogs/questions.ts';

const draftKey = 'stationwright.draft';
const waitMs = 600;

/**
 * Keeps unsaved work in the browser, so that a closed tab or a crash loses nothing: offers what is left from last time,
 * then writes every change once it has settled and forgets it when it is saved. The desktop shell has files for this.
 */
export async function keepDraft() {
  await offerDraft(localStorage.getItem(draftKey));
  let timer: ReturnType<typeof setTimeout> | undefined;
  documentStore.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(writeDraft, waitMs);
  });
  document.addEventListener('visibilitychange', () => document.hidden && writeDraft());
}

function writeDraft() {
  const state = documentStore.getState();
  if (!isEdited(state)) localStorage.removeItem(draftKey);
  else {
    try {
      localStorage.setItem(draftKey, writeStation(state.history.station));
    } catch {
      // Full or forbidden: the question before closing is still there.
    }
  }
}

async function offerDraft(text: string | null) {
  const read = text === null ? null : readStation(text);
  if (!read || !('station' in read)) return;
  const { station } = read;
  const choice = await ask({
    title: 'Bring back unsaved work?',
    text: `“${station.title}” was not saved when this page was last open: ${station.units.length} units, ${station.cables.length} cables.`,
    choices: [
      { id: 'discard', label: 'Discard it' },
      { id: 'restore', label: 'Bring it back' },
    ],
  });
  if (choice === 'restore') restoreDocument(station);
  else localStorage.removeItem(draftKey);
}
