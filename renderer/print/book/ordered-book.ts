import { readStation, type Station } from '../../../core/index.ts';
import { documentStore, openDocument } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { pngBase64, svgText } from '../drawing/drawing-picture.ts';
import { painted } from '../print-book.ts';
import { type PaperSize, partIds, setPrinting } from './book-store.ts';

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
  const problem = await surveyed(read.station);
  if (problem) return problem;
  setPrinting({ parts: partIds, paper });
  await painted();
  await document.fonts.ready;
  await painted();
  return null;
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

/** Waits for the survey of the document; a sentence where it could not be made. */
function surveyed(station: Station): Promise<string | null> {
  return new Promise((resolve) => {
    const look = () => {
      const { station: done, running, problem } = resultsStore.getState();
      if (done !== station || running || documentStore.getState().history.station !== station) return;
      end();
      resolve(problem);
    };
    const end = resultsStore.subscribe(look);
    look();
  });
}
