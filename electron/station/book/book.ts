import { existsSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Station, writeStation } from '../../../core/index.ts';
import { type Answer, type Command, Refusal } from '../command.ts';
import { browserVariable, findBrowser, findPrinter } from './find-browser.ts';
import { printPage, readPage } from './print-page.ts';
import { type BookOrder, type ServedBook, serveBook } from './serve-book.ts';

const screen = fileURLToPath(new URL('../renderer', import.meta.url));
const papers = ['a4', 'letter'];
const pictures = ['svg', 'png'] as const;

/** The station book as a PDF, made by the same screen as in the app. */
export const book: Command = {
  summary: 'the station book as a PDF (--out FILE, --paper a4 or letter)',
  forms: [],
  async run({ station, options: { out, paper = 'a4' } }) {
    if (!papers.includes(paper)) throw new Refusal(`--paper is ${papers.join(' or ')}.`);
    const file = placeOf(out, '--out FILE.pdf');
    const printer = findPrinter() ?? none('nor Electron’s program');
    return withScreen(station, { want: 'book', paper }, file, async (served) => {
      const ran = await printPage(printer, served.url, file);
      return 'problem' in ran ? ran.problem : null;
    });
  },
};

/** The drawing as a file of lines or of pixels, by the ending of its name. */
export const drawing: Command = {
  summary: 'the drawing as a picture (--out FILE.svg or FILE.png)',
  forms: [],
  async run({ station, options: { out } }) {
    const file = placeOf(out, '--out FILE.svg or FILE.png');
    const want = pictures.find((ending) => file.toLowerCase().endsWith(`.${ending}`));
    if (!want) throw new Refusal('The drawing is an SVG or a PNG: --out FILE.svg or FILE.png.');
    const browser = findBrowser() ?? none('');
    return withScreen(station, { want, paper: 'a4' }, file, async (served) => {
      const ran = await readPage(browser, served.url);
      if ('problem' in ran) return ran.problem;
      const base64 = /id="book-answer">([\w+/=]+)</.exec(ran.out)?.[1];
      if (base64 === undefined) return 'nothing came back';
      writeFileSync(file, Buffer.from(base64, 'base64'));
      return null;
    });
  },
};

function placeOf(out: string | null, example: string): string {
  if (out === null) throw new Refusal(`Say where it goes: ${example}.`);
  const file = path.resolve(out);
  if (!existsSync(path.dirname(file))) throw new Refusal(`There is no folder “${path.dirname(file)}”.`);
  return file;
}

function none(also: string): never {
  throw new Refusal(
    `No Chromium, Chrome or Edge was found${also && `, ${also}`}, and the screen draws it in one. Install one, or name it in ${browserVariable}.`,
  );
}

/** Has the built screen do something with a station; `act` gives a sentence where it failed. */
async function withScreen(
  station: Station,
  order: Omit<BookOrder, 'text'>,
  file: string,
  act: (served: ServedBook) => Promise<string | null>,
): Promise<Answer> {
  if (!existsSync(screen)) throw new Refusal('The screen is not built: run npm run build once.');
  const served = await serveBook(screen, { ...order, text: writeStation(station) });
  try {
    const failed = (await act(served)) ?? served.problem();
    if (failed) throw new Refusal(`It could not be made: ${failed}.`);
  } finally {
    served.close();
  }
  if (!existsSync(file)) throw new Refusal('It could not be made: nothing was written.');
  return { text: `${file}: ${Math.ceil(statSync(file).size / 1024)} kB\n`, status: 0 };
}
