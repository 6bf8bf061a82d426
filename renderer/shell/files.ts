import { browserFiles } from './browser-files.ts';
import { desktopFiles } from './desktop-files.ts';
import type { StationFiles } from './station-files.ts';

const bridge = globalThis.window?.stationwright;

/** The desktop shell's files where there is one, else the browser's. */
export const stationFiles: StationFiles = bridge ? desktopFiles(bridge) : browserFiles;

/** `Hut, 30 m` gives `hut-30-m.station.json`. */
export function suggestedName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain.slice(0, 60) || 'station'}.station.json`;
}
