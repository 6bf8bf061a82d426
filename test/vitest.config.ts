import path from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  test: {
    include: ['test/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['test/laws/seed.ts'],
    // Generated stations and live oracles take longer than the five seconds that a test has by default.
    testTimeout: 30_000,
    // Bundling the command line before its tests takes longer than ten where others work too.
    hookTimeout: 60_000,
  },
});
