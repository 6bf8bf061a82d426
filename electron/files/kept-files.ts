import { mkdir, readdir, readFile, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { app } from 'electron';
import { z } from 'zod';
import type { AboutUnsaved, UnsavedWork } from '../../renderer/shell/bridge.ts';
import { writeAtomically } from './writing/write-atomically.ts';

/** An unsaved document as it is on the disk. */
export interface KeptFile {
  readonly id: string;
  readonly keptAt: number;
  /** Null where it is damaged. */
  readonly about: AboutUnsaved | null;
  readonly text: string;
}

const ending = '.kept';
const folder = () => path.join(app.getPath('userData'), 'unsaved');

/** Where the document of that id is kept. */
export const keptPath = (id: string): string => path.join(folder(), id + ending);

const stampSchema = z.strictObject({ modifiedMs: z.number(), size: z.number(), inode: z.number() });
export const aboutSchema = z.strictObject({
  title: z.string(),
  units: z.int().nonnegative(),
  cables: z.int().nonnegative(),
  path: z.string().min(1).nullable(),
  stamp: stampSchema.nullable(),
});

/** All that is kept, the newest first; what is damaged is there too, with what can be had of it. */
export async function keptFiles(): Promise<KeptFile[]> {
  const names = await readdir(folder()).catch(() => []);
  const ids = names.filter((name) => name.endsWith(ending)).map((name) => name.slice(0, -ending.length));
  const files = await Promise.all(ids.map(keptFile));
  return files.filter((file) => file !== null).sort((a, b) => b.keptAt - a.keptAt);
}

/** Null where there is none of that id. */
export async function keptFile(id: string): Promise<KeptFile | null> {
  try {
    const keptAt = (await stat(keptPath(id))).mtimeMs;
    const content = await readFile(keptPath(id), 'utf8');
    const end = content.indexOf('\n');
    const about = parseAbout(content.slice(0, Math.max(0, end)));
    // Damaged, it is handed out whole: who knows where the document begins.
    return { id, keptAt, about, text: about ? content.slice(end + 1) : content };
  } catch {
    return null;
  }
}

/** One line about the document, then its text as it would be in its own file: it can be rescued by hand. */
export async function writeKeptFile(id: string, { text, about }: UnsavedWork): Promise<void> {
  await mkdir(folder(), { recursive: true });
  await writeAtomically(keptPath(id), `${JSON.stringify(about)}\n${text}`);
}

export const removeKeptFile = (id: string): Promise<void> => rm(keptPath(id), { force: true });

function parseAbout(line: string): AboutUnsaved | null {
  try {
    return aboutSchema.parse(JSON.parse(line));
  } catch {
    return null;
  }
}
