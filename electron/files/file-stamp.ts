import type { Stats } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { FileStamp } from '../../renderer/shell/bridge.ts';

/** What the file looks like now; throws where there is none. */
export const fileStamp = async (file: string): Promise<FileStamp> => stampOf(await stat(file));

export const stampOf = ({ mtimeMs, size, ino }: Stats): FileStamp => ({ modifiedMs: mtimeMs, size, inode: ino });
