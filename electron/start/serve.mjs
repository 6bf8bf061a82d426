import { createServer } from 'node:http';
import { readPageFile } from './page-file.mjs';

/**
 * Serves a folder on 127.0.0.1, on `port` or, if that is taken, the next free one of twenty; port 0 takes any.
 * @param {string} folder
 * @param {number} port
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export function serve(folder, port) {
  const server = createServer(async (request, response) => {
    const file = await readPageFile(folder, request.url ?? '/');
    if (!file) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not found');
      return;
    }
    const headers = { 'content-type': file.type, 'x-content-type-options': 'nosniff', 'cache-control': 'no-cache' };
    response.writeHead(200, headers).end(file.body);
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
      resolve({ url: `http://127.0.0.1:${address.port}/`, close: () => closeServer(server) });
    });
    server.listen(port, '127.0.0.1');
  });
}

/** @param {import('node:http').Server} server @returns {Promise<void>} */
function closeServer(server) {
  // A browser keeps its connections open, and close() would wait for it to leave.
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}
