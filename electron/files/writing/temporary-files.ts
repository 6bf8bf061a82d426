import { randomBytes } from 'node:crypto';
import { lstat, readdir, rm } from 'node:fs/promises';
import path from 'node:path';

const pattern = /^\.stationwright-[0-9a-f]{12}\.tmp$/;
const oldMs = 24 * 60 * 60 * 1000;

/** A new file of ours in this folder. Its name does not grow with the target's, which may have all that is allowed. */
export const temporaryFile = (folder: string): string =>
  path.join(folder, `.stationwright-${randomBytes(6).toString('hex')}.tmp`);

/** Takes away what a crash or a power cut has left in this folder: only our own temporary files, a day old or more. */
export async function sweepTemporaryFiles(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((one) => pattern.test(one))) {
    const file = path.join(folder, name);
    // What can't be taken away does no harm to a save that went well.
    if (await isStale(file).catch(() => false)) await rm(file, { force: true }).catch(() => {});
  }
}

async function isStale(file: string): Promise<boolean> {
  const about = await lstat(file);
  const isOurs = process.getuid === undefined || about.uid === process.getuid();
  return about.isFile() && isOurs && Date.now() - about.mtimeMs > oldMs;
}
