import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import * as files from 'node:fs/promises';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Backups, backupOf } from '../../../electron/files/writing/keep-backup.ts';
import { writeFile } from '../../../electron/files/writing/write-file.ts';
import { needs, needsUnix } from '../../needs.ts';
import { ownFolder } from './own-folder.ts';

// Real files, but for the one step that a test makes fail.
vi.mock('node:fs/promises', async (load) => {
  const actual = await load<typeof files>();
  return { ...actual, open: vi.fn(actual.open), rename: vi.fn(actual.rename) };
});
const { open: reallyOpen } = await vi.importActual<typeof files>('node:fs/promises');
afterEach(() => {
  vi.mocked(files.open).mockReset().mockImplementation(reallyOpen);
});

const at = ownFolder();
const failure = (code: string) => Object.assign(new Error(code), { code });
const kept = (when: Backups['when'] = 'always'): Backups => ({ folder: at('backups'), when });

/** The folder takes no new file: what a folder that one may not write to says. */
function closeFolder() {
  vi.mocked(files.open).mockImplementation(async (file, ...rest) => {
    if (String(file).startsWith(at('.stationwright-'))) throw failure('EACCES');
    return reallyOpen(file, ...rest);
  });
}

/** Every write of more than some bytes to this file fails, as on a full disk. */
function fillDisk(file: string, room: number) {
  vi.mocked(files.open).mockImplementation(async (given, ...rest) => {
    const handle = await reallyOpen(given, ...rest);
    if (String(given) !== file) return handle;
    const write = handle.write.bind(handle) as (...args: unknown[]) => Promise<unknown>;
    const limited = async (bytes: Uint8Array, from: number, length: number, position: number) => {
      if (position >= room) throw failure('ENOSPC');
      return write(bytes, from, Math.min(length, room - position), position);
    };
    return Object.assign(handle, { write: limited });
  });
}

describe('writing over a file', () => {
  it('says where it is and what it looks like now', async () => {
    writeFileSync(at('a.json'), 'old');
    const { mtimeMs: before } = statSync(at('a.json'));
    const saved = await writeFile(at('a.json'), 'newer', kept());
    const { mtimeMs, size, ino } = statSync(at('a.json'));
    expect(saved).toEqual({ path: at('a.json'), name: 'a.json', stamp: { modifiedMs: mtimeMs, size, inode: ino } });
    expect(mtimeMs).toBeGreaterThanOrEqual(before);
    expect(readFileSync(at('a.json'), 'utf8')).toBe('newer');
  });

  it('leaves nothing beside it but the backup of what was there', async () => {
    writeFileSync(at('a.json'), 'old');
    await writeFile(at('a.json'), 'new', kept());
    expect(readdirSync(at()).sort()).toEqual(['a.json', 'backups']);
    expect(readFileSync(backupOf(at('a.json'), at('backups')), 'utf8')).toBe('old');
    await writeFile(at('a.json'), 'newest', kept());
    expect(readdirSync(at('backups'))).toHaveLength(1);
    expect(readFileSync(backupOf(at('a.json'), at('backups')), 'utf8')).toBe('new');
  });

  it.each([0o640, 0o664, 0o600, 0o444])('keeps the mode %o whatever the usual one is', needsUnix, async (mode) => {
    writeFileSync(at('a.json'), 'old');
    chmodSync(at('a.json'), mode);
    await writeFile(at('a.json'), 'new', kept());
    expect(readFileSync(at('a.json'), 'utf8')).toBe('new');
    expect(statSync(at('a.json')).mode & 0o777).toBe(mode);
  });

  it('keeps the owner', needs('to be root', process.getuid?.() === 0), async () => {
    writeFileSync(at('a.json'), 'old');
    chownSync(at('a.json'), 65_534, 65_534);
    await writeFile(at('a.json'), 'new', kept());
    const { uid, gid } = statSync(at('a.json'));
    expect([uid, gid]).toEqual([65_534, 65_534]);
  });

  const python = (code: string, file = '') => spawnSync('python3', ['-c', `import os,sys,tempfile;${code}`, file]);
  const probe = python('f=tempfile.NamedTemporaryFile();os.setxattr(f.name,"user.note",b"mine")');
  it(
    'keeps extended attributes',
    needs('Python, and a disk with extended attributes', probe.status === 0),
    async () => {
      writeFileSync(at('a.json'), 'old');
      expect(python('os.setxattr(sys.argv[1],"user.note",b"mine")', at('a.json')).status).toBe(0);
      await writeFile(at('a.json'), 'new', kept());
      expect(readFileSync(at('a.json'), 'utf8')).toBe('new');
      expect(String(python('print(os.getxattr(sys.argv[1],"user.note"))', at('a.json')).stdout)).toContain('mine');
    },
  );

  it('keeps links, and follows one whose file is not there yet', needsUnix, async () => {
    writeFileSync(at('a.json'), 'old');
    symlinkSync(at('a.json'), at('link.json'));
    symlinkSync('later.json', at('early.json'));
    expect(await writeFile(at('link.json'), 'new', kept())).toMatchObject({ path: at('link.json'), name: 'link.json' });
    await writeFile(at('early.json'), 'first', kept());
    expect([lstatSync(at('link.json')), lstatSync(at('early.json'))].every((link) => link.isSymbolicLink())).toBe(true);
    expect(readFileSync(at('a.json'), 'utf8')).toBe('new');
    expect(readFileSync(at('later.json'), 'utf8')).toBe('first');
  });

  it('keeps a second name of it, with a backup first', async () => {
    writeFileSync(at('a.json'), 'the old, longer text');
    linkSync(at('a.json'), at('also.json'));
    await writeFile(at('a.json'), 'new', kept('if needed'));
    expect(readFileSync(at('also.json'), 'utf8')).toBe('new');
    expect(statSync(at('a.json')).ino).toBe(statSync(at('also.json')).ino);
    expect(readFileSync(backupOf(at('a.json'), at('backups')), 'utf8')).toBe('the old, longer text');
  });

  it('makes no backup that a table or picture does not need', async () => {
    writeFileSync(at('a.csv'), 'old');
    await writeFile(at('a.csv'), 'new', kept('if needed'));
    expect(readdirSync(at())).toEqual(['a.csv']);
  });

  it('writes where the folder takes no new file, with a backup first', async () => {
    writeFileSync(at('a.json'), 'old');
    closeFolder();
    expect(await writeFile(at('a.json'), 'new', kept('if needed'))).toMatchObject({ name: 'a.json' });
    expect(readFileSync(at('a.json'), 'utf8')).toBe('new');
    expect(readFileSync(backupOf(at('a.json'), at('backups')), 'utf8')).toBe('old');
  });
});

describe('a write that fails', () => {
  it('leaves a file alone that could only be torn, where there can be no backup', async () => {
    writeFileSync(at('a.json'), 'old');
    writeFileSync(at('backups'), 'a file in the way');
    closeFolder();
    const answer = await writeFile(at('a.json'), 'new', kept());
    expect(answer).toMatchObject({ error: expect.stringContaining('no backup of it could be made first') });
    expect(readFileSync(at('a.json'), 'utf8')).toBe('old');
  });

  it('puts the old text back where the new one had no room', async () => {
    writeFileSync(at('a.json'), 'old');
    linkSync(at('a.json'), at('also.json'));
    fillDisk(at('a.json'), 6);
    expect(await writeFile(at('a.json'), 'far too long', kept())).toEqual({
      error: 'a.json could not be saved: there is no space left. What was there before is as it was.',
    });
    expect(readFileSync(at('a.json'), 'utf8')).toBe('old');
  });

  it('says where the backup is when the old text can not be put back', async () => {
    writeFileSync(at('a.json'), 'the old text');
    linkSync(at('a.json'), at('also.json'));
    fillDisk(at('a.json'), 4);
    const backup = backupOf(at('a.json'), at('backups'));
    expect(await writeFile(at('a.json'), 'the new text', kept())).toEqual({
      error: `a.json could not be saved: there is no space left. What is in it now may be broken; the last saved state is in ${backup}.`,
    });
    expect(readFileSync(backup, 'utf8')).toBe('the old text');
  });

  it('names the folder that is gone, and says nothing of a file there', async () => {
    expect(await writeFile(at('gone/a.json'), 'new', kept())).toEqual({
      error: `a.json could not be saved: the folder ${at('gone')} is not there any more. Save it in another place.`,
    });
  });

  it('does not speak of what was there before where nothing was', async () => {
    vi.mocked(files.rename).mockRejectedValueOnce(failure('ENOSPC'));
    expect(await writeFile(at('a.json'), 'new', kept())).toEqual({
      error: 'a.json could not be saved: there is no space left.',
    });
    expect(readdirSync(at())).toEqual([]);
  });

  it('takes no folder for a file', async () => {
    mkdirSync(at('taken'));
    expect(await writeFile(at('taken'), 'new', kept())).toEqual({
      error: 'taken could not be saved: something else than a file has this name. What was there before is as it was.',
    });
    expect(readdirSync(at())).toEqual(['taken']);
  });
});
