import { defineConfig } from '@playwright/test';
import { chromiumArgs, findChromium } from './browser.ts';

export default defineConfig({
  testDir: '.',
  outputDir: '../dist/test/e2e',
  fullyParallel: true,
  workers: 2,
  // Two browsers at a time on two cores that may have other work as well, and may be five times slower.
  timeout: 240_000,
  expect: { timeout: 30_000 },
  forbidOnly: Boolean(process.env['CI']),
  reporter: 'list',
  use: {
    viewport: { width: 1280, height: 800 },
    // Nothing glides or pulses, which takes long to paint; journeys that are about it ask for it.
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: { executablePath: findChromium(), args: chromiumArgs },
  },
});
