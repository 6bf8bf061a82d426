import path from 'node:path';
import { expect, it } from 'vitest';
import { namedFiles } from '../../../electron/files/named-files.ts';

const folder = path.resolve('/desk');

it.each([
  { name: 'none', line: ['electron', '.'], files: [] },
  { name: 'one, from the folder of the start', line: ['electron', '.', 'a.station.json'], files: ['a.station.json'] },
  {
    name: 'two among switches',
    line: ['app', '--x=y.json', 'A.JSON', '--flag', 'b.json'],
    files: ['A.JSON', 'b.json'],
  },
])('finds the files of a command line: $name', ({ line, files }) => {
  expect(namedFiles(line, folder)).toEqual(files.map((file) => path.join(folder, file)));
});

it('keeps full paths', () => {
  const full = path.resolve('/other/a.json');
  expect(namedFiles(['app', full], folder)).toEqual([full]);
});
