import { tell } from '../app/dialogs/questions.ts';
import { suggestedName } from '../shell/files.ts';
import { currentStation } from '../store/document.ts';
import { type BookRequest, closePaper, setPrinting } from './book/book-store.ts';

/** Puts the chosen parts on paper by the system's print dialog. */
export const printBook = (request: BookRequest) =>
  onPaper(request, async () => (window.stationwright ? window.stationwright.print() : printPage()), 'Not printed');

function printPage(): null {
  window.print();
  return null;
}

/** Writes the chosen parts as a PDF; a browser does that from its print dialog. */
export async function saveBook(request: BookRequest) {
  const bridge = window.stationwright;
  if (!bridge) return printBook(request);
  const name = suggestedName(currentStation().title).replace('.station.json', '.pdf');
  await onPaper(request, () => bridge.savePdf({ suggestedName: name }), 'Not saved');
}

async function onPaper(request: BookRequest, act: () => Promise<object | null>, failed: string) {
  closePaper();
  setPrinting(request);
  await painted();
  const answer = await act();
  setPrinting(null);
  if (answer && 'error' in answer) await tell(failed, String(answer.error));
}

/** Once what was asked for is on the page: after the next frame is painted. */
export const painted = (): Promise<void> =>
  new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done())));
