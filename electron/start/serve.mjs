import { listenLocally, refuse } from './local-server.mjs';
import { readPageFile } from './page-file.mjs';

/**
 * Serves the built screen to the browser of this machine, see `listenLocally`.
 * @param {string} folder
 * @param {number} port
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export function serve(folder, port) {
  return listenLocally(port, async ({ path }, response) => {
    const file = await readPageFile(folder, path);
    if (!file) return refuse(response, 404);
    response.writeHead(200, { ...file.headers, 'cache-control': 'no-cache' }).end(file.body);
  });
}
