import { readStation, type Station } from '../../../core/index.ts';
import { documentStore, openDocument } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { painted } from '../print-book.ts';
import { type PaperSize, partIds, setPrinting } from './book-store.ts';

/** What the command line orders: it is in the page as a block of data. */
interface Order {
  readonly text: string;
  readonly paper: PaperSize;
}

const order = () => document.getElementById('book-order')?.textContent ?? null;

/** Whether the page was opened to make a book and nothing else. */
export const isBookOrdered = (): boolean => order() !== null;

/** Makes the book that was ordered and says when it is on the page, or why it can't be. */
export async function makeOrderedBook() {
  const problem = await make(JSON.parse(order() ?? '{}') as Order).catch((error) => String(error));
  new Image().src = problem ? `book-is-there?problem=${encodeURIComponent(problem)}` : 'book-is-there';
}

async function make({ text, paper }: Order): Promise<string | null> {
  const read = readStation(text);
  if (!('station' in read)) return read.problems.map((p) => `${p.place}: ${p.message}`).join('; ');
  openDocument(read.station);
  const problem = await surveyed(read.station);
  if (problem) return problem;
  setPrinting({ parts: partIds, paper });
  await painted();
  await document.fonts.ready;
  await painted();
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
