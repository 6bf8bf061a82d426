import path from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  test: {
    include: ['test/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['test/laws/seed.ts'],
    // Generated stations and live oracles take longer than the five seconds that a test has by default, and much longer
    // on a slow machine that has other work as well; so does bundling the command line before its tests.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
