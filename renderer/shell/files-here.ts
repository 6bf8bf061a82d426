import { browserFiles } from './browser-files.ts';
import { desktopFiles } from './desktop-files.ts';
import type { StationFiles } from './station-files.ts';

const bridge = globalThis.window?.stationwright;

/** The desktop shell's files where there is one, else the browser's. */
export const filesHere: StationFiles = bridge ? desktopFiles(bridge) : browserFiles;
