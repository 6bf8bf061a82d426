import type { Stats } from 'node:fs';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import type { NotDone, SavedFile } from '../../../renderer/shell/bridge.ts';
import { fileStamp } from '../file-stamp.ts';
import { plainReason } from '../plain-reason.ts';
import { realPath } from '../same-file.ts';
import { type Backups, keepBackup } from './keep-backup.ts';
import { replaceFile } from './replace-file.ts';
import { rewriteFile } from './rewrite-file.ts';
import { writeProblem } from './write-problem.ts';

/**
 * Writes all of it, or nothing and a sentence that says why. A file that is there keeps its mode, owner, access list,
 * extended attributes and links: it is replaced by a whole new one that has these, or written over where it is.
 */
export async function writeFile(
  file: string,
  content: string | Uint8Array,
  backups: Backups,
): Promise<SavedFile | NotDone> {
  // A link keeps being a link: its target is what gets written.
  const target = realPath(file);
  const old = await stat(target).catch(() => null);
  let backup: string | null = null;
  try {
    if (old && !old.isFile()) throw new Error('something else than a file has this name');
    if (old && backups.when === 'always') backup = await keepBackup(target, backups.folder).catch(reportOnly);
    if (!(await replaceFile(target, content, old))) {
      backup ??= await keepBackup(target, backups.folder).catch(cannotBackUp);
      await rewriteFile(target, content, old as Stats);
    }
    return { path: file, name: path.basename(file), stamp: await fileStamp(target) };
  } catch (error) {
    return writeProblem({ file: target, name: path.basename(file), error, wasThere: old !== null, backup });
  }
}

/** A backup that can't be kept is no reason to stop a save that can't harm the old file. */
function reportOnly(error: unknown): null {
  console.error('backup:', error);
  return null;
}

function cannotBackUp(error: unknown): never {
  throw new Error(
    `it can only be written over where it is, and no backup of it could be made first (${plainReason(error)})`,
    { cause: error },
  );
}
