import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { writeAtomically } from '../../../electron/files/writing/write-atomically.ts';
import { ownFolder } from './own-folder.ts';

const at = ownFolder();

it('writes text and bytes, over what was there', async () => {
  const file = at('a.json');
  await writeAtomically(file, 'first');
  await writeAtomically(file, new Uint8Array([104, 105]));
  expect(readFileSync(file, 'utf8')).toBe('hi');
  expect(readdirSync(at())).toEqual(['a.json']);
});

it('leaves nothing beside a target that can not be replaced', async () => {
  // A folder with something in it takes no file's place.
  const file = at('taken');
  mkdirSync(file);
  writeFileSync(at('taken/kept'), 'kept');
  await expect(writeAtomically(file, 'x')).rejects.toThrow();
  expect(readdirSync(at())).toEqual(['taken']);
  expect(readFileSync(at('taken/kept'), 'utf8')).toBe('kept');
});

it('fails in a folder that is not there', async () => {
  await expect(writeAtomically(at('none/a.json'), 'x')).rejects.toMatchObject({ code: 'ENOENT' });
});
