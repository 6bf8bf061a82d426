import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import path from 'node:path';

/** @type {Record<string, string>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/**
 * Serves a folder on 127.0.0.1, on `port` or, if that is taken, the next free one of twenty; port 0 takes any.
 * @param {string} folder
 * @param {number} port
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export function serve(folder, port) {
  const top = path.resolve(folder);
  const server = createServer(async (request, response) => {
    const file = fileInside(top, request.url ?? '/');
    const body = file && (await readFile(file).catch(() => null));
    if (!file || !body) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not found');
      return;
    }
    const type = types[path.extname(file)] ?? 'application/octet-stream';
    response
      .writeHead(200, { 'content-type': type, 'x-content-type-options': 'nosniff', 'cache-control': 'no-cache' })
      .end(body);
  });
  return new Promise((resolve, reject) => {
    let tried = 0;
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      tried += 1;
      if (error.code === 'EADDRINUSE' && tried < 20) server.listen(port + tried, '127.0.0.1');
      else reject(error);
    });
    server.on('listening', () => {
      const address = /** @type {import('node:net').AddressInfo} */ (server.address());
      const close = () => /** @type {Promise<void>} */ (new Promise((done) => server.close(() => done())));
      resolve({ url: `http://127.0.0.1:${address.port}/`, close });
    });
    server.listen(port, '127.0.0.1');
  });
}

/**
 * The file that an address names, or null if it leads out of the folder or can't be read as an address.
 * @param {string} top
 * @param {string} address
 */
export function fileInside(top, address) {
  try {
    const wanted = decodeURIComponent(new URL(address, 'http://127.0.0.1').pathname);
    const file = path.join(top, wanted.endsWith('/') ? `${wanted}index.html` : wanted);
    return file.startsWith(top + path.sep) && !file.includes('\0') ? file : null;
  } catch {
    return null;
  }
}
