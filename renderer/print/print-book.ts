import { tell } from '../app/dialogs/questions.ts';
import { suggestedName } from '../shell/suggested-name.ts';
import { currentStation } from '../store/document.ts';
import { closePaper, type PreparedBook, setPrinting } from './book/book-store.ts';

/** Puts the chosen parts on paper by the system's print dialog. */
export const printBook = (book: PreparedBook) =>
  onPaper(book, async () => (window.stationwright ? window.stationwright.print() : printPage()), 'Not printed');

function printPage(): null {
  window.print();
  return null;
}

/** Writes the chosen parts as a PDF; a browser does that from its print dialog. */
export async function saveBook(book: PreparedBook) {
  const bridge = window.stationwright;
  if (!bridge) return printBook(book);
  const name = suggestedName(currentStation().title).replace('.station.json', '.pdf');
  await onPaper(book, () => bridge.savePdf({ suggestedName: name }), 'Not saved');
}

async function onPaper(book: PreparedBook, act: () => Promise<object | null>, failed: string) {
  closePaper();
  setPrinting(book);
  await painted();
  const answer = isBookThere() ? await act() : { error: 'A part of the book could not be drawn.' };
  setPrinting(null);
  if (answer && 'error' in answer) await tell(failed, String(answer.error));
}

/** Where a part of it throws, the screen has something else to say. */
export const isBookThere = (): boolean => document.querySelector('.book') !== null;

/** Once what was asked for is on the page: after the next frame is painted. */
export const painted = (): Promise<void> =>
  new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done())));
