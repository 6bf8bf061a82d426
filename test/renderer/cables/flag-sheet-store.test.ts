import { expect, test } from 'vitest';
import { usualFlagSheet } from '../../../core/index.ts';
import { sheetFrom } from '../../../renderer/print/flags/flag-sheet-store.ts';

test.each([
  [
    'what was kept',
    { ...usualFlagSheet, rows: 7, page: 'letter', rings: false },
    { rows: 7, page: 'letter', rings: false },
  ],
  ['a field of an older sheet that is missing', { rows: 7 }, { rows: 7 }],
  ['words where a number belongs', { rows: 'seven', columns: 3 }, { columns: 3 }],
  ['a number out of all bounds', { rows: 1e9, leftMm: -5, topMm: Number.NaN }, {}],
  ['a page that there is not', { page: 'a0', style: 'glue' }, {}],
  ['a field that there is not', { colour: 'red' }, {}],
])('%s: the sheet of flags has the usual beside it', (_name, kept, changed) =>
  expect(sheetFrom(kept)).toEqual({ ...usualFlagSheet, ...changed }),
);
