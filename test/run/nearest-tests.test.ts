import { describe, expect, it } from 'vitest';
import { nearestTests } from './nearest-tests.mjs';

const tests = [
  { file: 'test/architecture.test.ts', text: '' },
  { file: 'test/rules/collect.test.ts', text: `import { collect } from '../../core/rules/findings-from.ts';` },
  { file: 'test/rules/rf/feedback.test.ts', text: `import { draw } from '../../stations/draw.ts';` },
  { file: 'test/rules/rf/swr.test.ts', text: '' },
  { file: 'test/survey.test.ts', text: `import { survey } from '../core/survey.ts';` },
  { file: 'test/stations/draw.test.ts', text: `import { draw } from './draw.ts';` },
  { file: 'test/electron/start/serve.test.ts', text: '' },
];

describe('the tests near an edit', () => {
  it.each<[string, string[], string[]]>([
    ['of a test are itself', ['test/rules/rf/swr.test.ts'], ['test/rules/rf/swr.test.ts']],
    [
      'of a core file stand in its mirror',
      ['core/rules/rf/swr.ts'],
      ['test/rules/rf/feedback.test.ts', 'test/rules/rf/swr.test.ts'],
    ],
    [
      'or in the folder above',
      ['core/rules/rf/parts/gain.ts'],
      ['test/rules/rf/feedback.test.ts', 'test/rules/rf/swr.test.ts'],
    ],
    ['or import it', ['core/survey.ts'], ['test/survey.test.ts']],
    ['of the shell stand in its folder', ['electron/start/open.mjs'], ['test/electron/start/serve.test.ts']],
    [
      'of a tool for tests are its own and its users',
      ['test/stations/draw.ts'],
      ['test/rules/rf/feedback.test.ts', 'test/stations/draw.test.ts'],
    ],
    ['of a text are none', ['README.md', 'core/new/thing.ts'], []],
    ['of a removed test are none', ['test/gone.test.ts'], []],
  ])('%s', (_title, edited, near) => expect(nearestTests(edited, tests)).toEqual(near));
});
