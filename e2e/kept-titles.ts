import type { Page } from '@playwright/test';

/** The titles of the unsaved work that the browser's database holds now. */
export const keptTitles = (page: Page) =>
  page.evaluate(async () => {
    const ended = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await ended(indexedDB.open('stationwright'));
    try {
      if (!database.objectStoreNames.contains('unsaved')) return [];
      const rows = await ended(database.transaction('unsaved').objectStore('unsaved').getAll());
      return rows.map((row) => JSON.parse(row.text).title as string);
    } finally {
      database.close();
    }
  });
