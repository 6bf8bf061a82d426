import { readStation } from '../../../core/index.ts';
import { failureIn } from '../../store/computed.ts';
import { openDocument } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { pngBase64, svgText } from '../drawing/drawing-picture.ts';
import { isBookThere, painted } from '../print-book.ts';
import { type PaperSize, type PreparedBook, partIds, setPrinting } from './book-store.ts';
import { prepareBook } from './prepare-book.ts';

/** What the command line orders: it is in the page as a block of data. */
interface Order {
  readonly text: string;
  readonly want: 'book' | 'svg' | 'png';
  readonly paper: PaperSize;
}

const order = () => document.getElementById('book-order')?.textContent ?? null;

/** Whether the page was opened to make a book or a picture and nothing else. */
export const isBookOrdered = (): boolean => order() !== null;

/** Makes what was ordered and says when it is on the page, or why it can't be. */
export async function makeOrderedBook() {
  const problem = await make(JSON.parse(order() ?? '{}') as Order).catch((error) => String(error));
  // Said in an address, which has room for a sentence or two.
  new Image().src = problem
    ? `book-is-there?${new URLSearchParams({ problem: problem.slice(0, 500) })}`
    : 'book-is-there';
}

async function make({ text, want, paper }: Order): Promise<string | null> {
  const read = readStation(text);
  if (!('station' in read)) return read.problems.map((p) => `${p.place}: ${p.message}`).join('; ');
  openDocument(read.station);
  await document.fonts.ready;
  if (want === 'svg') return answer(base64Of(await svgText()));
  if (want === 'png') return answer(await pngBase64());
  const book = await new Promise<PreparedBook>((ready) => prepareBook({ parts: partIds, paper }, ready));
  // A book to keep is of now, or there is none.
  const failure =
    failureIn(resultsStore.getState()) ??
    (book.powerUp && failureIn(book.powerUp)) ??
    (book.mixUps && failureIn(book.mixUps));
  if (failure) return `${failure.doing}: ${failure.words}`;
  setPrinting(book);
  await painted();
  await document.fonts.ready;
  await painted();
  return isBookThere() ? null : 'a part of it could not be drawn';
}

const base64Of = (text: string): string =>
  btoa(Array.from(new TextEncoder().encode(text), (byte) => String.fromCharCode(byte)).join(''));

/** Leaves a file, in base64, on the page as a block of data. */
function answer(base64: string): null {
  const block = document.createElement('script');
  block.type = 'text/plain';
  block.id = 'book-answer';
  block.textContent = base64;
  document.body.append(block);
  return null;
}
