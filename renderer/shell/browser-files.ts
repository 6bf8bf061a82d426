import { browserStamp, changedSince, type FileHandle, isHandle, writeTo } from './file-handle.ts';
import type { OpenedDocument, StationFiles } from './station-files.ts';

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
      return { name: file.name, place: handle, text: await file.text(), stamp: browserStamp(file) };
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
    const change = known && (await this.look({ ...file, name: known.name, place: known }));
    if (change) return change;
    try {
      const handle = known ?? (await showSaveFilePicker?.({ suggestedName: file?.name ?? suggestedName, types }));
      if (!handle) return null;
      return { name: handle.name, place: handle, ...(await writeTo(handle, text)) };
    } catch (error) {
      return cancelledOr(error, 'The file could not be saved');
    }
  },

  async look({ place, stamp }) {
    return isHandle(place) && stamp ? changedSince(place, stamp) : null;
  },
};

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

/** Hands a text, or the bytes of a picture, over as a download. */
export function download(content: string | Uint8Array<ArrayBuffer>, name: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content]));
  link.download = name;
  link.click();
  // Not at once: the browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
