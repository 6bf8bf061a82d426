import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { readStation, type Station } from '../core/index.ts';

/** Saves the document by the button and reads it back as a station. */
export async function saved(page: Page, file: string): Promise<Station> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await (await download).saveAs(file);
  const read = readStation(await readFile(file, 'utf8'));
  if (!('station' in read)) throw new Error(JSON.stringify(read.problems));
  return read.station;
}
