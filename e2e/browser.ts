import path from 'node:path';
import { test as base, expect } from '@playwright/test';
import { serve } from '../electron/start/serve.mjs';
import { chromiumArgs, findChromium } from '../test/run/chromium.mjs';

export { chromiumArgs, expect, findChromium };

const builtRenderer = path.join(import.meta.dirname, '../dist/renderer');

/** A test with the built screen served for it: `page.goto(address)` opens it. */
export const test = base.extend<object, { address: string }>({
  address: [
    async ({}, use) => {
      const server = await serve(builtRenderer, 0);
      await use(server.url);
      await server.close();
    },
    { scope: 'worker' },
  ],
});
