import { readFile } from 'node:fs/promises';
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
 * The file of the built screen that an address names, or null if there is none or the address leads out of the folder.
 * Both the browser's server and the desktop shell hand out the screen with this.
 * @param {string} folder
 * @param {string} address
 * @returns {Promise<{ body: Uint8Array<ArrayBuffer>, type: string } | null>}
 */
export async function readPageFile(folder, address) {
  const file = fileInside(path.resolve(folder), address);
  if (file === null) return null;
  const body = await readFile(file).catch(() => null);
  return body && { body, type: types[path.extname(file)] ?? 'application/octet-stream' };
}

/** @param {string} top @param {string} address */
function fileInside(top, address) {
  try {
    const wanted = decodeURIComponent(new URL(address, 'http://127.0.0.1').pathname);
    const file = path.join(top, wanted.endsWith('/') ? `${wanted}index.html` : wanted);
    return file.startsWith(top + path.sep) ? file : null;
  } catch {
    return null;
  }
}
