import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const systemPaths = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Quiet, and able to start as root and without a graphics card. */
export const chromiumArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The system's browser, else Playwright's own; where neither is there, the place that Playwright's would have. */
export function findChromium() {
  return systemPaths.find((file) => existsSync(file)) ?? chromium.executablePath();
}
