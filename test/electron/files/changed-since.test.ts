import { chmodSync, mkdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileStamp } from '../../../electron/files/file-stamp.ts';
import { inTurn } from '../../../electron/files/in-turn.ts';
import { changedSince } from '../../../electron/files/writing/changed-since.ts';
import { isReadOnly } from '../../../electron/files/writing/is-read-only.ts';
import { ownFolder } from './own-folder.ts';

const at = ownFolder();

describe('a file since it was read', () => {
  it('is the same until somebody writes to it, if only the same number of letters', async () => {
    writeFileSync(at('a.json'), 'mine!');
    const stamp = await fileStamp(at('a.json'));
    expect(await changedSince(at('a.json'), stamp)).toBeNull();
    writeFileSync(at('a.json'), 'their');
    utimesSync(at('a.json'), 1, 2);
    expect(await changedSince(at('a.json'), stamp)).toEqual({ changed: await fileStamp(at('a.json')), text: 'their' });
  });

  it('is another where one of the same time and length was put in its place', async () => {
    for (const name of ['a.json', 'b.json']) {
      writeFileSync(at(name), name);
      utimesSync(at(name), 1, 2);
    }
    const stamp = await fileStamp(at('a.json'));
    expect(await changedSince(at('b.json'), stamp)).toMatchObject({ text: 'b.json' });
  });

  it('is read when whoever writes it has done so', async () => {
    writeFileSync(at('a.json'), 'mine');
    const stamp = await fileStamp(at('a.json'));
    writeFileSync(at('a.json'), '');
    const looked = changedSince(at('a.json'), stamp);
    setTimeout(() => writeFileSync(at('a.json'), 'all of theirs'), 10);
    expect(await looked).toEqual({ changed: await fileStamp(at('a.json')), text: 'all of theirs' });
  });

  it('may hold no text, or be gone with its folder', async () => {
    mkdirSync(at('stick'));
    writeFileSync(at('stick/a.json'), 'mine');
    const stamp = await fileStamp(at('stick/a.json'));
    writeFileSync(at('stick/a.json'), Buffer.from([0xff, 0xfe, 0]));
    expect(await changedSince(at('stick/a.json'), stamp)).toEqual({
      changed: await fileStamp(at('stick/a.json')),
      text: null,
    });
    rmSync(at('stick'), { recursive: true });
    expect(await changedSince(at('stick/a.json'), stamp)).toEqual({ changed: null, text: null });
  });
});

it('one thing at a time is done with a file, also after one that failed', async () => {
  const done: string[] = [];
  const slow = inTurn(at('a.json'), async () => {
    await new Promise((resolve) => setTimeout(resolve, 20));
    done.push('slow');
    throw new Error('failed');
  });
  const next = inTurn(at('./a.json'), async () => done.push('next'));
  const other = inTurn(at('b.json'), async () => done.push('other'));
  await expect(slow).rejects.toThrow('failed');
  await Promise.all([next, other]);
  expect(done).toEqual(['other', 'slow', 'next']);
});

it('a file is read-only by its mark, whoever asks; what is not there is not', async () => {
  writeFileSync(at('a.json'), 'x');
  expect(await isReadOnly(at('a.json'))).toBe(false);
  chmodSync(at('a.json'), 0o444);
  expect(await isReadOnly(at('a.json'))).toBe(true);
  expect(await isReadOnly(at('none.json'))).toBe(false);
  expect(await isReadOnly(at())).toBe(false);
});
