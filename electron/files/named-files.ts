import path from 'node:path';

/**
 * The station files that a command line names, as full paths. Told by their ending: a second start hands over its
 * whole command line, with the program and Chromium's own switches in an order that can't be relied on.
 */
export function namedFiles(commandLine: readonly string[], folder: string): string[] {
  return commandLine
    .filter((argument) => !argument.startsWith('-') && argument.toLowerCase().endsWith('.json'))
    .map((file) => path.resolve(folder, file));
}
