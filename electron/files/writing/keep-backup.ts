import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { fitName } from '../fit-name.ts';
import { writeAtomically } from './write-atomically.ts';

export interface Backups {
  /** The folder for them, beside the user's data. */
  readonly folder: string;
  /** Before every write over a file, or only before one that a power cut could tear. */
  readonly when: 'always' | 'if needed';
}

/** The newest are kept; one per file. */
export const mostBackups = 50;
const pattern = /^[0-9a-f]{8}-/;

/** Where the backup of a file is, if there is one. */
export function backupOf(target: string, backups: string): string {
  const mark = createHash('sha256').update(target).digest('hex').slice(0, 8);
  return path.join(backups, fitName(`${mark}-${path.basename(target)}`));
}

/** Copies the file, as it was saved last, into the folder of backups; returns where to. */
export async function keepBackup(target: string, backups: string): Promise<string> {
  const backup = backupOf(target, backups);
  await mkdir(backups, { recursive: true });
  await writeAtomically(backup, await readFile(target));
  await dropOldest(backups);
  return backup;
}

async function dropOldest(backups: string): Promise<void> {
  const names = (await readdir(backups)).filter((name) => pattern.test(name));
  if (names.length <= mostBackups) return;
  const dated = await Promise.all(
    names.map(async (name) => ({ name, at: (await stat(path.join(backups, name))).mtimeMs })),
  );
  dated.sort((one, other) => other.at - one.at);
  for (const { name } of dated.slice(mostBackups)) await rm(path.join(backups, name), { force: true });
}
