import { readFile, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { pageHeaders } from './page-policy.mjs';

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
 * The file of the built screen that the path of an address names, still with its `%20`s, and the headers that it goes
 * out with. Null if there is none, or if the path or a link leads out of the folder. Both servers and the desktop shell
 * hand out the screen with this.
 * @param {string} folder
 * @param {string} pathname
 * @returns {Promise<{ body: Uint8Array<ArrayBuffer>, headers: Record<string, string> } | null>}
 */
export async function readPageFile(folder, pathname) {
  try {
    const top = await realpath(folder);
    const wanted = path.join(top, decodeURIComponent(pathname.endsWith('/') ? `${pathname}index.html` : pathname));
    const file = await realpath(wanted);
    if (!file.startsWith(top + path.sep) || !(await stat(file)).isFile()) return null;
    const type = types[path.extname(file)] ?? 'application/octet-stream';
    return { body: await readFile(file), headers: { ...pageHeaders, 'content-type': type } };
  } catch {
    // Not there, not to be read, or no path at all: `%zz`, `%00`, a name that is too long.
    return null;
  }
}
