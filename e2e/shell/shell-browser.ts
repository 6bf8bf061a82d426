import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { chromiumArgs, findChromium } from '../browser.ts';

/** A Chromium for the windows of stand-ins, of one at a time: each has a context of its own, which goes with it. */
export interface ShellBrowser {
  /** Where a stand-in connects to it. */
  readonly address: string;
  /** Shows what is opened in the browser, in the contexts of stand-ins too. */
  readonly context: BrowserContext;
  /** Pages of the stand-in that runs now. */
  pages(): Page[];
  close(): Promise<void>;
}

export async function startShellBrowser(): Promise<ShellBrowser> {
  const profile = mkdtempSync(path.join(tmpdir(), 'stationwright-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: [...chromiumArgs, '--remote-debugging-port=0'],
    // Windows have the size that the shell gives them.
    viewport: null,
  });
  const own = context.pages();
  const [port] = readFileSync(path.join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
  return {
    address: `http://127.0.0.1:${port}`,
    context,
    pages: () => context.pages().filter((page) => !own.includes(page)),
    async close() {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
