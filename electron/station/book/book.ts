import { existsSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeStation } from '../../../core/index.ts';
import { type Command, Refusal } from '../command.ts';
import { browserVariable, findPrinter } from './find-browser.ts';
import { printPage } from './print-page.ts';
import { serveBook } from './serve-book.ts';

const screen = fileURLToPath(new URL('../renderer', import.meta.url));
const papers = ['a4', 'letter'];

/** The station book as a PDF, made by the same screen as in the app. */
export const book: Command = {
  summary: 'the station book as a PDF (--out FILE, --paper a4 or letter)',
  forms: [],
  async run({ station, options: { out, paper = 'a4' } }) {
    if (out === null) throw new Refusal('Say where the book goes: --out FILE.pdf.');
    if (!papers.includes(paper)) throw new Refusal(`--paper is ${papers.join(' or ')}.`);
    const folder = path.dirname(path.resolve(out));
    if (!existsSync(folder)) throw new Refusal(`There is no folder “${folder}”.`);
    const printer = findPrinter();
    if (!printer)
      throw new Refusal(
        `No Chromium, Chrome or Edge was found, nor Electron’s program, and the book is printed by one of them. Install one, or name a browser in ${browserVariable}.`,
      );
    if (!existsSync(screen)) throw new Refusal('The screen is not built: run npm run build once.');
    const served = await serveBook(screen, { text: writeStation(station), paper });
    try {
      const failed = (await printPage(printer, served.url, path.resolve(out))) ?? served.problem();
      if (failed) throw new Refusal(`The book could not be made: ${failed}.`);
    } finally {
      served.close();
    }
    if (!existsSync(out)) throw new Refusal(`The book could not be made: ${printer.program} wrote nothing.`);
    return { text: `${out}: ${Math.ceil(statSync(out).size / 1024)} kB\n`, status: 0 };
  },
};
