import { describeDifference, type Problem, readStation, type Station, writeStation } from '../../../core/index.ts';
import type { FileChanged } from '../../shell/bridge.ts';
import {
  currentStation,
  type DocumentFile,
  documentStore,
  isEdited,
  markApart,
  markSeen,
  reloadDocument,
} from '../../store/document.ts';
import { ask } from '../dialogs/questions.ts';

/** What to do next: `over` writes to the file, `elsewhere` asks for another place. */
export type Decision = 'over' | 'elsewhere' | 'nothing';

type Theirs = { readonly station: Station } | { readonly problems: readonly Problem[] };

const mostLines = 12;

/**
 * Decides with the user what is to become of a file that somebody else has written to or taken away: before a save over
 * it, or when the window comes to the front. Nothing is asked where the same document is in it.
 */
export async function decideOnChange(file: DocumentFile, found: FileChanged, isSaving: boolean): Promise<Decision> {
  const { name, place } = file;
  if (!found.changed) {
    markApart({ name, place });
    return askWhereGone(file);
  }
  const seen = { name, place, stamp: found.changed };
  const theirs: Theirs = found.text === null ? { problems: [] } : readStation(found.text);
  if (isAsSaved(theirs)) {
    markSeen(seen);
    return isSaving ? 'over' : 'nothing';
  }
  const choice = await askWhose(file, theirs, isSaving);
  if (choice === 'load' && 'station' in theirs) reloadDocument(theirs.station, seen);
  if (choice === 'mine') markApart(seen, 'station' in theirs ? theirs.station : undefined);
  if (choice === 'elsewhere') return 'elsewhere';
  return choice === 'mine' && isSaving ? 'over' : 'nothing';
}

/** Copied back, touched, or written by another program in its own way. */
const isAsSaved = (theirs: Theirs): boolean =>
  'station' in theirs && writeStation(theirs.station) === writeStation(documentStore.getState().saved);

async function askWhereGone({ name }: DocumentFile): Promise<Decision> {
  const choice = await ask({
    title: `${name} is gone`,
    text: 'It is not in its place any more: moved, renamed or deleted. The station is only on this screen now.',
    choices: [
      { id: 'nothing', label: 'Not now' },
      { id: 'elsewhere', label: 'Save as…' },
      { id: 'over', label: 'Save it there again' },
    ],
  });
  return choice as Decision;
}

function askWhose({ name }: DocumentFile, theirs: Theirs, isSaving: boolean): Promise<string> {
  const mine = { id: 'mine', label: isSaving ? 'Keep mine, save over it' : 'Keep mine' };
  const elsewhere = { id: 'elsewhere', label: 'Save mine as…' };
  const load = 'station' in theirs ? [{ id: 'load', label: 'Load what is in the file' }] : [];
  return ask({
    title: `${name} was changed by somebody else`,
    ...whatDiffers(theirs),
    // What Escape does leaves all as it is, and what Enter does loses nothing: loading can be undone.
    choices: isSaving ? [{ id: 'cancel', label: 'Cancel' }, mine, ...load, elsewhere] : [mine, elsewhere, ...load],
  });
}

function whatDiffers(theirs: Theirs): { text: string; lines?: string[]; problems?: readonly Problem[] } {
  if (!('station' in theirs))
    return { text: 'What is in the file now can’t be read as a station.', problems: theirs.problems };
  const words = describeDifference(currentStation(), theirs.station).map((line) => line.words);
  const more = words.length - mostLines;
  const edited = isEdited(documentStore.getState())
    ? ' Yours has changes that are not saved; undo brings them back.'
    : '';
  return {
    text: `Loading what is in the file would change this of what is on the screen.${edited}`,
    lines: more > 1 ? [...words.slice(0, mostLines), `and ${more} more changes`] : words,
  };
}
