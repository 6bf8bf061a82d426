import { existsSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeStation } from '../../../core/index.ts';
import { plainReason } from '../../files/plain-reason.ts';
import { writeAtomically } from '../../files/writing/write-atomically.ts';
import type { Answer, Command, Given } from '../command.ts';
import { oneLine, quoted } from '../printable.ts';
import { Refusal } from '../refusal.ts';
import { findBrowser, findPrinter, nothingToDrawIn } from './find-browser.ts';
import { isWhole } from './is-whole.ts';
import { printPage, readPage } from './print-page.ts';
import { type BookOrder, type BookPage, type ServedBook, serveBook } from './serve-book.ts';

const screen = fileURLToPath(new URL('../renderer', import.meta.url));

/** The station book as a PDF, made by the same screen as in the app. */
export const book: Command = {
  summary: 'the station book as a PDF',
  forms: [],
  options: ['out', 'paper'],
  async run(given) {
    const { file } = placeOf(given.options.out, ['pdf']);
    const printer = findPrinter() ?? none('nor Electron’s program');
    const order = { want: 'book', paper: given.options.paper ?? 'a4' } as const;
    const pdf = await withScreen(given, order, ({ url }) => printPage(printer, url));
    return written(file, 'pdf', pdf);
  },
};

/** The drawing as a file of lines or of pixels, by the ending of its name. */
export const drawing: Command = {
  summary: 'the drawing as a picture',
  forms: [],
  options: ['out'],
  async run(given) {
    const { file, ending } = placeOf(given.options.out, ['svg', 'png']);
    const browser = findBrowser() ?? none('');
    const page = await withScreen(given, { want: ending, paper: 'a4' }, ({ url }) => readPage(browser, url));
    const base64 = /id="book-answer">([\w+/=]+)</.exec(page.toString('latin1'))?.[1];
    if (base64 === undefined) throw new Refusal('It could not be made: the browser ended with half of the page.');
    return written(file, ending, Buffer.from(base64, 'base64'));
  },
};

/** Where the file goes and which of the endings it has; refused before anything is made where it can't go there. */
function placeOf<Ending extends string>(
  out: string | null,
  endings: readonly Ending[],
): { file: string; ending: Ending } {
  const example = endings.map((ending) => `FILE.${ending}`).join(' or ');
  if (out === null) throw new Refusal(`Say where it goes: --out ${example}.`);
  const ending = endings.find((one) => out.toLowerCase().endsWith(`.${one}`));
  if (!ending)
    throw new Refusal(`Its name has to end in .${endings.join(' or .')}: --out ${example}, not ${quoted(out)}.`);
  const file = path.resolve(out);
  const folder = path.dirname(file);
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new Refusal(`There is no folder ${quoted(folder)}.`);
  const old = statSync(file, { throwIfNoEntry: false });
  if (old?.isDirectory()) throw new Refusal(`${quoted(file)} is a folder; name a file in it.`);
  if (old && !old.isFile()) throw new Refusal(`${quoted(file)} is not a file; it goes to one only.`);
  return { file, ending };
}

function none(also: string): never {
  throw new Refusal(nothingToDrawIn(also));
}

const steps = {
  waiting: 'starting the browser',
  asked: 'the browser draws the station',
  made: 'the browser writes it down',
};

/** Has the built screen make what is ordered, and gives what the browser made of it. */
async function withScreen(
  { station, progress }: Given,
  order: Omit<BookOrder, 'text'>,
  act: (served: ServedBook) => Promise<{ bytes: Buffer } | { problem: string }>,
): Promise<Buffer> {
  if (!existsSync(path.join(screen, 'index.html')))
    throw new Refusal('The screen is not built: run npm run build once.');
  const tell = (page: BookPage) => typeof page === 'string' && progress?.(steps[page]);
  tell('waiting');
  const served = await serveBook(screen, { ...order, text: writeStation(station) }, tell);
  try {
    const made = await act(served);
    const page = served.page();
    // The station was read here, so this is a fault of ours and is told as one.
    if (typeof page === 'object') throw new Error(oneLine(page.problem, 500));
    if ('problem' in made) throw new Refusal(`It could not be made: ${made.problem}.`);
    if (page !== 'made') throw new Refusal('It could not be made: the browser ended before the page was drawn.');
    return made.bytes;
  } finally {
    await served.close();
  }
}

/** Puts a file there that is whole, in place of an older one only then. */
async function written(file: string, format: keyof typeof isWhole, bytes: Buffer): Promise<Answer> {
  if (!isWhole[format](bytes)) throw new Refusal('It could not be made: the browser ended with half of it.');
  try {
    await writeAtomically(file, bytes);
  } catch (error) {
    throw new Refusal(`${quoted(file)} could not be written: ${plainReason(error)}.`);
  }
  return { text: `${file}: ${Math.ceil(bytes.length / 1024)} kB\n`, status: 0 };
}
