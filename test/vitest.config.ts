import path from 'node:path';
import { defineConfig } from 'vitest/config';

// These put something else in the place of a module, which would stay there for the files after them.
const alone = [
  'test/electron/files/write-file.test.ts',
  'test/command/trouble.test.ts',
  'test/command/surveys.test.ts',
];

export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  test: {
    environment: 'node',
    setupFiles: ['test/laws/seed.ts'],
    // By itself it takes one fewer than there are cores.
    maxWorkers: '100%',
    // Most of what a survey makes is soon rubbish: in a wider nursery it is gone before it has to be moved.
    execArgv: ['--max-semi-space-size=64'],
    // Generated stations and live oracles take longer than the five seconds that a test has by default, and much longer
    // on a slow machine that has other work as well; so does bundling the command line before its tests.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      // Most files share the modules that they read: reading core anew for each takes longer than the tests do.
      { extends: true, test: { name: 'together', include: ['test/**/*.test.ts'], exclude: alone, isolate: false } },
      { extends: true, test: { name: 'alone', include: alone } },
    ],
  },
});
