import { readlinkSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';

/** Whether two paths lead to one file: by links in the way, or as two names of it. */
export function isSameFile(one: string, other: string): boolean {
  if (realPath(one) === realPath(other)) return true;
  const [a, b] = [inodeOf(one), inodeOf(other)];
  return a !== null && a === b;
}

function inodeOf(file: string): string | null {
  try {
    const { dev, ino } = statSync(file, { bigint: true });
    return ino > 0n ? `${dev}:${ino}` : null;
  } catch {
    return null;
  }
}

const mostLinks = 40;

/** Where a path leads when all links are followed; also that of a file, or of a link's target, which is not there yet. */
export function realPath(file: string, linksLeft = mostLinks): string {
  try {
    return realpathSync.native(file);
  } catch {
    const target = linkTarget(file);
    if (target !== null && linksLeft > 0) return realPath(target, linksLeft - 1);
    const folder = path.dirname(file);
    return folder === file ? file : path.join(realPath(folder, linksLeft), path.basename(file));
  }
}

function linkTarget(file: string): string | null {
  try {
    return path.resolve(path.dirname(file), readlinkSync(file));
  } catch {
    return null;
  }
}
