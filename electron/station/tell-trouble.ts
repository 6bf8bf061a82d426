import { randomBytes } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Trouble, troubleReport } from '../../core/index.ts';
import { oneLine } from './printable.ts';

/**
 * A sentence about a fault of the program itself, which names the file with the report on it. The report goes into the
 * first of the folders that takes it; where none does the sentence says so. Never throws.
 */
export function tellTrouble(
  { doing, error, station }: Omit<Trouble, 'where'>,
  folders: readonly string[] = [tmpdir(), process.cwd()],
): string {
  const where = `Node ${process.versions.node} on ${process.platform}`;
  const file = keep(troubleReport({ doing, error, station, where }), folders);
  const what = error instanceof Error ? oneLine(error.message) : 'for no reason that it gave';
  const report = file
    ? `a report that you may send${station ? ', with the station in it,' : ''} is in ${oneLine(file, 1000)}`
    : 'a report on it could not be written';
  return `Stationwright itself failed while ${doing} (${what}), which says nothing about the station; ${report}.`;
}

function keep(report: string, folders: readonly string[]): string | null {
  const name = `stationwright-report-${randomBytes(4).toString('hex')}.txt`;
  for (const folder of folders) {
    const file = path.join(folder, name);
    try {
      // Nobody else's to read: it holds the user's station.
      writeFileSync(file, report, { flag: 'wx', mode: 0o600 });
      return file;
    } catch {
      // The next folder may take it.
    }
  }
  return null;
}
