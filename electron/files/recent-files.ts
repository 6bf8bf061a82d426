import { readFileSync } from 'node:fs';
import path from 'node:path';
import { app } from 'electron';
import { z } from 'zod';
import { writeAtomically } from './writing/write-atomically.ts';

const most = 10;
const listFile = () => path.join(app.getPath('userData'), 'recent.json');
const listSchema = z.array(z.string()).max(most);

let changed = () => {};

/** Calls the listener whenever the list has changed. There is one: the menu. */
export function watchRecentFiles(listener: () => void): void {
  changed = listener;
}

/** Paths of the files opened or saved last, the latest first; empty if there is no list or it can't be read. */
export function recentFiles(): string[] {
  try {
    return listSchema.parse(JSON.parse(readFileSync(listFile(), 'utf8')));
  } catch {
    return [];
  }
}

/** Also tells the system, which keeps a list of its own (dock, taskbar). */
export async function addRecentFile(file: string): Promise<void> {
  app.addRecentDocument(file);
  await keep([file, ...recentFiles().filter((other) => other !== file)].slice(0, most));
}

export async function clearRecentFiles(): Promise<void> {
  app.clearRecentDocuments();
  await keep([]);
}

async function keep(files: string[]): Promise<void> {
  // A list that can't be kept is no reason to disturb a save that went well.
  await writeAtomically(listFile(), JSON.stringify(files)).catch((error) => console.error('recent files:', error));
  changed();
}
