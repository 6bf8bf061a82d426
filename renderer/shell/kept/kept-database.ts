import type { KeptEntry } from './kept-work.ts';

/** An entry as the browser keeps it. A file's place is the handle that the browser gave for it. */
export type KeptRow = Omit<KeptEntry, 'fileChanged'>;

const database = 'stationwright';
const store = 'unsaved';

/** Every entry there is. Rejects where the browser forbids its database. */
export const allRows = (): Promise<KeptRow[]> => transact('readonly', (rows) => rows.getAll());

/** Rejects where there is no room; the older entry of that id is then still there. */
export async function putRow(row: KeptRow): Promise<void> {
  await transact('readwrite', (rows) => rows.put(row)).catch((error) => {
    if (!isNamed(error, 'DataCloneError')) throw error;
    // A handle that can't be kept: without it the document has its file's name, and saving asks for the place.
    const file = row.about?.file && { ...row.about.file, place: null };
    return transact('readwrite', (rows) => rows.put({ ...row, about: row.about && { ...row.about, file } }));
  });
}

export const deleteRow = (id: string): Promise<undefined> => transact('readwrite', (rows) => rows.delete(id));

/** The end of a sentence that says why the database could not be used. */
export function databaseReason(error: unknown): string {
  if (isNamed(error, 'QuotaExceededError')) return 'it has no room left';
  if (isNamed(error, 'SecurityError')) return 'its settings forbid it';
  return `it refuses (${error instanceof Error ? error.message || error.name : String(error)})`;
}

const isNamed = (error: unknown, name: string): boolean => error instanceof DOMException && error.name === name;

/** Does one thing with the entries; what it did is on the disk when it comes back. */
async function transact<Result>(
  mode: IDBTransactionMode,
  act: (rows: IDBObjectStore) => IDBRequest<Result>,
): Promise<Result> {
  // Opened anew each time: one that lies open stands in the way of other tabs, and the browser may close it.
  const opened = await open();
  try {
    return await new Promise((resolve, reject) => {
      const transaction = opened.transaction(store, mode, { durability: 'strict' });
      const request = act(transaction.objectStore(store));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error ?? request.error ?? new Error('it broke off'));
    });
  } finally {
    opened.close();
  }
}

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(database, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(store, { keyPath: 'id' });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('it does not open'));
    request.onblocked = () => reject(new Error('another tab holds it'));
  });
}
