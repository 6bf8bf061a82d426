import { randomBytes } from 'node:crypto';
import type { ServerResponse } from 'node:http';
import { listenLocally, refuse } from '../../start/local-server.mjs';
import { readPageFile } from '../../start/page-file.mjs';

/** What the page is told: the station's text and what is wanted of it. */
export interface BookOrder {
  readonly text: string;
  readonly want: 'book' | 'svg' | 'png';
  readonly paper: string;
}

/** How far the page is: `asked` for by a browser, `made`, or a sentence where it could not make what was ordered. */
export type BookPage = 'waiting' | 'asked' | 'made' | { readonly problem: string };

export interface ServedBook {
  readonly url: string;
  readonly page: () => BookPage;
  close(): Promise<void>;
}

/**
 * Serves the built screen on 127.0.0.1 with an order in it. A browser prints a page once everything on it has come: a
 * picture on the page comes only when the page says that the book is there. All of it stands in a folder whose name
 * nobody can guess, and the page with the station is handed out once, since addresses of a browser's command line can
 * be seen by others on the machine. `changed` is called at each step of the page.
 */
export async function serveBook(
  folder: string,
  order: BookOrder,
  changed: (page: BookPage) => void = () => {},
): Promise<ServedBook> {
  const secret = `/${randomBytes(16).toString('hex')}`;
  const waiting: ServerResponse[] = [];
  let page: BookPage = 'waiting';
  const turn = (to: BookPage) => {
    page = to;
    changed(to);
  };
  const { url, close } = await listenLocally(0, async ({ path, query }, response) => {
    if (!path.startsWith(`${secret}/`)) return refuse(response, 404);
    const inside = path.slice(secret.length);
    if (inside === '/book-waits') {
      if (page === 'asked') waiting.push(response);
      else response.writeHead(204).end();
    } else if (inside === '/book-is-there') {
      const problem = query.get('problem');
      if (page === 'asked') turn(problem === null ? 'made' : { problem });
      for (const one of [response, ...waiting.splice(0)]) one.writeHead(204).end();
    } else {
      const isOrder = inside === '/';
      if (isOrder && page !== 'waiting') return refuse(response, 404);
      if (isOrder) turn('asked');
      const file = await readPageFile(folder, inside);
      if (!file) return refuse(response, 404);
      const body = isOrder ? withOrder(Buffer.from(file.body).toString('utf8'), order) : file.body;
      response.writeHead(200, { ...file.headers, 'cache-control': 'no-store' }).end(body);
    }
  });
  return { url: `${url.slice(0, -1)}${secret}/`, page: () => page, close };
}

/** The page with the order as a block of data, which no script policy minds, and the picture that is waited for. */
function withOrder(page: string, order: BookOrder): string {
  const json = JSON.stringify(order).replaceAll('<', '\\u003c');
  const block = `<script type="application/json" id="book-order">${json}</script><img src="book-waits" alt="" hidden>`;
  return page.replace('</body>', () => `${block}</body>`);
}
