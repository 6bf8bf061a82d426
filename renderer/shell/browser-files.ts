import type { OpenedDocument, StationFiles } from './station-files.ts';

/** The part of the File System Access standard that is used; not every browser has it. */
interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}
interface Pickers {
  showOpenFilePicker?(options: object): Promise<FileHandle[]>;
  showSaveFilePicker?(options: object): Promise<FileHandle>;
}

const types = [{ description: 'Station', accept: { 'application/json': ['.station.json'] } }];
const pickers = (): Pickers => globalThis as Pickers;

/** Files in a plain browser: written back in place where the browser can, else as a download. */
export const browserFiles: StationFiles = {
  async open() {
    const { showOpenFilePicker } = pickers();
    if (!showOpenFilePicker) return openByInput();
    try {
      const [handle] = await showOpenFilePicker({ types });
      if (!handle) return null;
      const file = await handle.getFile();
      return { name: file.name, place: handle, text: await file.text() };
    } catch (error) {
      return cancelledOr(error, 'The file could not be opened');
    }
  },

  async save({ text, file, suggestedName, askWhere }) {
    const { showSaveFilePicker } = pickers();
    const known = isHandle(file?.place) && !askWhere ? file.place : null;
    if (!known && !showSaveFilePicker) {
      download(text, file?.name ?? suggestedName);
      return { name: file?.name ?? suggestedName, place: null };
    }
    try {
      const handle = known ?? (await showSaveFilePicker?.({ suggestedName: file?.name ?? suggestedName, types }));
      if (!handle) return null;
      const writable = await handle.createWritable();
      await writable.write(text);
      await writable.close();
      return { name: handle.name, place: handle };
    } catch (error) {
      return cancelledOr(error, 'The file could not be saved');
    }
  },
};

const isHandle = (place: unknown): place is FileHandle =>
  typeof place === 'object' && place !== null && 'createWritable' in place;

function cancelledOr(error: unknown, sentence: string) {
  if (error instanceof DOMException && error.name === 'AbortError') return null;
  return { error: `${sentence}: ${error instanceof Error ? error.message : String(error)}` };
}

/** Asks for a file by the way that every browser has. */
export function openByInput(): Promise<OpenedDocument | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.json,application/json';
    input.addEventListener('cancel', () => resolve(null));
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      if (!file) return resolve(null);
      void file.text().then((text) => resolve({ name: file.name, place: null, text }));
    });
    input.click();
  });
}

/** Hands a text over as a download. */
export function download(text: string, name: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: name.endsWith('.csv') ? 'text/csv' : 'application/json' }));
  link.download = name;
  link.click();
  // Not at once: the browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
