import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { writeAtomically } from '../../electron/files/write-atomically.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'stationwright-write-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('writes text and bytes, over what was there', async () => {
  const file = path.join(folder, 'a.json');
  await writeAtomically(file, 'first');
  await writeAtomically(file, new Uint8Array([104, 105]));
  expect(readFileSync(file, 'utf8')).toBe('hi');
  expect(readdirSync(folder)).toEqual(['a.json']);
});

it('leaves nothing beside a target that can not be replaced', async () => {
  // A folder with something in it takes no file's place.
  const file = path.join(folder, 'taken');
  mkdirSync(file);
  writeFileSync(path.join(file, 'kept'), 'kept');
  await expect(writeAtomically(file, 'x')).rejects.toThrow();
  expect(readdirSync(folder)).toEqual(['taken']);
  expect(readFileSync(path.join(file, 'kept'), 'utf8')).toBe('kept');
});

it('fails in a folder that is not there', async () => {
  await expect(writeAtomically(path.join(folder, 'none/a.json'), 'x')).rejects.toMatchObject({ code: 'ENOENT' });
});

it.skipIf(process.platform === 'win32')('keeps permissions, and a link stays a link', async () => {
  const file = path.join(folder, 'a.json');
  writeFileSync(file, 'old');
  chmodSync(file, 0o640);
  const link = path.join(folder, 'link.json');
  symlinkSync(file, link);
  await writeAtomically(link, 'new');
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(statSync(file).mode & 0o777).toBe(0o640);
});
