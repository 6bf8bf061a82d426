import path from 'node:path';
import type { NotDone } from '../../../renderer/shell/bridge.ts';
import { plainReason } from '../plain-reason.ts';
import { TornFile } from './rewrite-file.ts';

interface Failure {
  /** Where it was to be written, links followed. */
  readonly file: string;
  /** As the user knows it. */
  readonly name: string;
  readonly error: unknown;
  /** There was a file before. */
  readonly wasThere: boolean;
  readonly backup: string | null;
}

/** Why a file could not be written, and what that did to the one that was there. */
export function writeProblem({ file, name, error, wasThere, backup }: Failure): NotDone {
  const saved = `${name} could not be saved`;
  if (isGone(error))
    return { error: `${saved}: the folder ${path.dirname(file)} is not there any more. Save it in another place.` };
  if (error instanceof TornFile && backup)
    return {
      error: `${saved}: ${plainReason(error.cause)}. What is in it now may be broken; the last saved state is in ${backup}.`,
    };
  return { error: `${saved}: ${plainReason(error)}.${wasThere ? ' What was there before is as it was.' : ''}` };
}

const isGone = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && ['ENOENT', 'ENOTDIR'].includes(String(error.code));
