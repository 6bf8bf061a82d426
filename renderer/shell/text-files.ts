import type { NotDone } from './bridge.ts';
import { download, openByInput } from './browser-files.ts';

const bridge = () => globalThis.window?.stationwright;

/** Writes a text to a new file: true when it is there, false where the user thought better of it. */
export async function exportText(text: string, suggestedName: string): Promise<boolean | NotDone> {
  const shell = bridge();
  if (!shell) {
    download(text, suggestedName);
    return true;
  }
  const answer = await shell.exportFile({ suggestedName, content: text, encoding: 'utf8' });
  return answer && 'error' in answer ? answer : answer !== null;
}

/** Asks for a file and gives its text; null where the user cancelled. */
export const importText = (): Promise<{ name: string; text: string } | null> => openByInput();
