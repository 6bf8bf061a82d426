import path from 'node:path';
import { protocol, type WebFrameMain } from 'electron';
import { readPageFile } from './start/page-file.mjs';

const scheme = 'app';
const host = 'bundle';
const builtPage = path.join(__dirname, '../renderer');

/** Where the screen is loaded from. Not `file:`, from which Chromium loads no modules. */
export const pageAddress = `${scheme}://${host}/index.html`;

/** To be called before the app is ready. */
export function announcePage(): void {
  const privileges = { standard: true, secure: true, supportFetchAPI: true, codeCache: true };
  protocol.registerSchemesAsPrivileged([{ scheme, privileges }]);
}

/** Hands out the built screen's files, and no others. */
export function servePage(): void {
  protocol.handle(scheme, async ({ url }) => {
    const file = isOurs(url) ? await readPageFile(builtPage, new URL(url).pathname) : null;
    return file ? new Response(file.body, { headers: file.headers }) : new Response('not found', { status: 404 });
  });
}

/** The screen itself: neither another page nor a frame in it. */
export function isOwnPage(frame: WebFrameMain | null): boolean {
  return frame !== null && frame.parent === null && isOurs(frame.url);
}

function isOurs(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  return url.protocol === `${scheme}:` && url.host === host;
}
