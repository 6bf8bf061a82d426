import { mkdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { edit, type MixUp, type Station, writeStation } from '../../core/index.ts';
import { plainReason } from '../files/plain-reason.ts';
import { writeAtomically } from '../files/writing/write-atomically.ts';
import { quoted } from './printable.ts';
import { Refusal } from './refusal.ts';

/** Letters of an act's id that a file is called by: every file system takes so many. */
const mostLetters = 120;

/** Puts each mix-up into a folder as a station file, drawn wrong; gives the names of the files, in their order. */
export async function keepMixUps(folder: string, station: Station, mixUps: readonly MixUp[]): Promise<string[]> {
  const names = fileNames(mixUps.map(({ act }) => act.id));
  for (const [i, { act }] of mixUps.entries()) {
    const file = path.join(folder, names[i] ?? '');
    try {
      await writeAtomically(file, writeStation(edit(station, act.change)));
    } catch (error) {
      throw new Refusal(`${quoted(file)} could not be written: ${plainReason(error)}.`);
    }
  }
  return names;
}

/** Makes the folder where it is not there, or refuses: nobody waits for a study that could not be kept. */
export async function makeFolder(folder: string): Promise<void> {
  if (await isFolder(folder)) return;
  const around = path.dirname(path.resolve(folder));
  try {
    // Folder by folder: with its parents at once Node asks for ever where a file system takes none.
    if (around !== path.resolve(folder)) await makeFolder(around);
    await mkdir(folder);
  } catch (error) {
    if (error instanceof Refusal) throw error;
    throw new Refusal(`There can be no folder ${quoted(folder)}: ${folderReason(error)}.`);
  }
}

const isFolder = (name: string): Promise<boolean> =>
  stat(name).then(
    (found) => found.isDirectory(),
    () => false,
  );

/** The system's codes are about files: for a folder they mean something else. */
function folderReason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'EEXIST') return 'there is a file of that name';
  return code === 'ENOENT' ? 'the one around it takes none' : plainReason(error);
}

/**
 * A file name for each id, all different, capital letters or not.
 *
 *     fileNames(['moved d4.b receiver.antenna']) // ['moved-d4.b-receiver.antenna.station.json']
 */
export function fileNames(ids: readonly string[]): string[] {
  const taken = new Set<string>();
  return ids.map((id) => {
    const plain = id.replace(/[^A-Za-z0-9._-]+/g, '-').slice(0, mostLetters);
    let name = plain;
    for (let n = 2; taken.has(name.toLowerCase()); n++) name = `${plain}-${n}`;
    taken.add(name.toLowerCase());
    return `${name}.station.json`;
  });
}
