import { existsSync, linkSync, readdirSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fitName } from '../../../electron/files/fit-name.ts';
import { isSameFile } from '../../../electron/files/same-file.ts';
import { backupOf, keepBackup, mostBackups } from '../../../electron/files/writing/keep-backup.ts';
import { sweepTemporaryFiles, temporaryFile } from '../../../electron/files/writing/temporary-files.ts';
import { writeFile } from '../../../electron/files/writing/write-file.ts';
import { needsUnix } from '../../needs.ts';
import { ownFolder } from './own-folder.ts';

const at = ownFolder();

describe('a name that is suggested', () => {
  it.each([
    { name: 'short', given: 'hut.station.json', fits: 'hut.station.json' },
    { name: 'long', given: `${'a'.repeat(300)}.station.json`, fits: `${'a'.repeat(242)}.station.json` },
    { name: 'long in bytes only', given: `${'無'.repeat(100)}.station.json`, fits: `${'無'.repeat(80)}.station.json` },
    { name: 'of pairs of code units', given: `${'📻'.repeat(70)}.pdf`, fits: `${'📻'.repeat(62)}.pdf` },
    { name: 'without an ending', given: 'b'.repeat(300), fits: 'b'.repeat(255) },
    { name: 'all ending', given: `.${'c'.repeat(300)}`, fits: `.${'c'.repeat(254)}` },
  ])('is cut to what a file can have: $name', ({ given, fits }) => {
    expect(fitName(given)).toBe(fits);
    writeFileSync(at(fits), 'it can be written');
  });
});

describe('a name as long as the file system allows', () => {
  it.each(['a'.repeat(255), '無'.repeat(85)])('is saved to, again and again', async (name) => {
    const backups = { folder: at('backups'), when: 'always' } as const;
    for (const text of ['first', 'second']) expect(await writeFile(at(name), text, backups)).toMatchObject({ name });
    expect(readdirSync(at()).sort()).toEqual([name, 'backups'].sort());
    expect(existsSync(backupOf(at(name), at('backups')))).toBe(true);
  });
});

describe('temporary files', () => {
  it('are swept where they are ours and old, and only there', async () => {
    const [old, fresh] = [temporaryFile(at()), temporaryFile(at())];
    const others = [at('work.tmp'), at('.stationwright-notes.tmp'), at('.stationwright-0123456789ab.tmp.json')];
    for (const file of [old, fresh, ...others]) writeFileSync(file, 'x');
    const twoDaysAgo = Date.now() / 1000 - 2 * 24 * 60 * 60;
    for (const file of [old, ...others]) utimesSync(file, twoDaysAgo, twoDaysAgo);
    await sweepTemporaryFiles(at());
    expect(existsSync(old)).toBe(false);
    for (const file of [fresh, ...others]) expect(existsSync(file), file).toBe(true);
  });
});

describe('backups', () => {
  it('are one per file, also of equal names, and no more than the limit', async () => {
    for (let i = 0; i < mostBackups + 3; i += 1) {
      writeFileSync(at(`${i}.json`), 'x');
      const backup = await keepBackup(at(`${i}.json`), at('backups'));
      utimesSync(backup, 1000 + i, 1000 + i);
    }
    const names = readdirSync(at('backups'));
    expect(names).toHaveLength(mostBackups);
    expect(existsSync(backupOf(at('0.json'), at('backups')))).toBe(false);
    expect(existsSync(backupOf(at(`${mostBackups + 2}.json`), at('backups')))).toBe(true);
    expect(backupOf('/one/a.json', '/b')).not.toBe(backupOf('/other/a.json', '/b'));
  });
});

describe('one file', needsUnix, () => {
  it('is the same by a link, by a linked folder and by its second name', () => {
    writeFileSync(at('a.json'), 'x');
    writeFileSync(at('b.json'), 'x');
    symlinkSync('a.json', at('link.json'));
    linkSync(at('a.json'), at('also.json'));
    symlinkSync('.', at('folder'));
    for (const name of ['link.json', 'also.json', 'folder/a.json', 'folder/link.json'])
      expect(isSameFile(at('a.json'), at(name)), name).toBe(true);
    for (const name of ['b.json', 'none.json']) expect(isSameFile(at('a.json'), at(name)), name).toBe(false);
  });

  it('is the same before it is there', () => {
    symlinkSync('.', at('folder'));
    symlinkSync('later.json', at('early.json'));
    expect(isSameFile(at('later.json'), at('folder/later.json'))).toBe(true);
    expect(isSameFile(at('later.json'), at('early.json'))).toBe(true);
    expect(isSameFile(at('later.json'), at('other.json'))).toBe(false);
  });

  it('does not follow links in a circle for ever', () => {
    symlinkSync('two.json', at('one.json'));
    symlinkSync('one.json', at('two.json'));
    expect(isSameFile(at('one.json'), at('three.json'))).toBe(false);
  });
});
