import { createServer } from 'node:http';

/** @typedef {{ path: string, query: URLSearchParams }} Asked the path as it was sent, with its `%20`s */
/** @typedef {(asked: Asked, response: import('node:http').ServerResponse) => unknown} Answer */

/**
 * A server on 127.0.0.1 for the browser of this machine, on `port` or, if that is taken, the next free one of twenty; port
 * 0 takes any. Only what asks for the server by its own name, to read something, gets to `answer`: a page from elsewhere
 * whose name was pointed to this machine, an upload and a malformed address do not.
 * @param {number} port
 * @param {Answer} answer
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export function listenLocally(port, answer) {
  const server = createServer(async (request, response) => {
    const asked = readRequest(request, /** @type {import('node:net').AddressInfo} */ (server.address()).port);
    if ('status' in asked) return refuse(response, asked.status);
    try {
      await answer(asked, response);
    } catch {
      // One request that goes wrong is no reason to end the server.
      response.destroy();
    }
  });
  return new Promise((resolve, reject) => {
    let tried = 0;
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      tried += 1;
      if (error.code === 'EADDRINUSE' && tried < 20 && port + tried < 65536) server.listen(port + tried, '127.0.0.1');
      else reject(error);
    });
    server.on('listening', () => {
      const address = /** @type {import('node:net').AddressInfo} */ (server.address());
      resolve({ url: `http://127.0.0.1:${address.port}/`, close: () => closeServer(server) });
    });
    server.listen(port, '127.0.0.1');
  });
}

/** @param {import('node:http').ServerResponse} response @param {number} status */
export function refuse(response, status) {
  const allow = status === 405 ? { allow: 'GET, HEAD' } : {};
  response.writeHead(status, { 'content-type': 'text/plain', 'x-content-type-options': 'nosniff', ...allow });
  response.end(status === 404 ? 'not found' : 'not for this server');
}

/**
 * What is asked for, or the status that refuses it.
 * @param {import('node:http').IncomingMessage} request
 * @param {number} port
 * @returns {Asked | { status: number }}
 */
function readRequest({ method, headers, url = '' }, port) {
  if (method !== 'GET' && method !== 'HEAD') return { status: 405 };
  if (![`127.0.0.1:${port}`, `localhost:${port}`].includes(headers.host?.toLowerCase() ?? '')) return { status: 421 };
  // `*` and whole addresses are for proxies; `//name` would be taken for a host.
  if (!url.startsWith('/') || url.startsWith('//')) return { status: 400 };
  const [path = '', ...query] = url.split('?');
  return { path, query: new URLSearchParams(query.join('?')) };
}

/** @param {import('node:http').Server} server @returns {Promise<void>} */
function closeServer(server) {
  // A browser keeps its connections open, and close() would wait for it to leave.
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}
