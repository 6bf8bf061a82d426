import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readPageFile } from '../../start/page-file.mjs';

/** What the page is told: the station's text and what is wanted of it. */
export interface BookOrder {
  readonly text: string;
  readonly want: 'book' | 'svg' | 'png';
  readonly paper: string;
}

export interface ServedBook {
  readonly url: string;
  /** A sentence where the page could not make the book; null while it did not say so. */
  readonly problem: () => string | null;
  close(): void;
}

/**
 * Serves the built screen on 127.0.0.1 with an order in it. A browser prints a page once everything on it has come: a
 * picture on the page comes only when the page says that the book is there.
 */
export function serveBook(folder: string, order: BookOrder): Promise<ServedBook> {
  const waiting: ServerResponse[] = [];
  let problem: string | null = null;
  const answerAll = () => {
    for (const response of waiting.splice(0)) response.writeHead(204).end();
  };
  const server = createServer(async (request, response) => {
    const { pathname, searchParams } = new URL(request.url ?? '/', 'http://127.0.0.1');
    if (pathname === '/book-waits') {
      waiting.push(response);
    } else if (pathname === '/book-is-there') {
      problem = searchParams.get('problem');
      response.writeHead(204).end();
      answerAll();
    } else {
      const file = await readPageFile(folder, pathname);
      if (!file) {
        response.writeHead(404).end();
        return;
      }
      const body = pathname === '/' ? withOrder(Buffer.from(file.body).toString('utf8'), order) : file.body;
      response.writeHead(200, { 'content-type': file.type }).end(body);
    }
  });
  return new Promise((resolve, reject) => {
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      const close = () => {
        server.closeAllConnections();
        server.close();
      };
      resolve({ url: `http://127.0.0.1:${port}/`, problem: () => problem, close });
    });
  });
}

/** The page with the order as a block of data, which no script policy minds, and the picture that is waited for. */
function withOrder(page: string, order: BookOrder): string {
  const json = JSON.stringify(order).replaceAll('<', '\\u003c');
  const block = `<script type="application/json" id="book-order">${json}</script><img src="book-waits" alt="" hidden>`;
  return page.replace('</body>', () => `${block}</body>`);
}
