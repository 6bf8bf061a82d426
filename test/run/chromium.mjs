import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

// The one that has no window at all goes first: it starts and draws in half the time.
const systemPaths = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome'].map(
  (name) => `/usr/bin/${name}`,
);

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
