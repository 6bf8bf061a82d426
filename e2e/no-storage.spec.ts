import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { stage, takeFromShelf, unit } from './drawing.ts';
import { keptTitles } from './kept-titles.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';

/** What a browser does whose settings forbid all storage: the very names throw. */
function forbid() {
  const refuse = () => {
    throw new DOMException('Access is denied for this document.', 'SecurityError');
  };
  for (const name of ['localStorage', 'sessionStorage', 'indexedDB'])
    Object.defineProperty(window, name, { get: refuse });
  LockManager.prototype.request = async () => refuse();
}

/** What it does when there is no room: reading goes, writing does not. It counts the entries that it refused. */
function fill() {
  const refuse = () => {
    throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
  };
  let refused = 0;
  Storage.prototype.setItem = refuse;
  IDBObjectStore.prototype.put = () => {
    Object.assign(window, { refused: ++refused });
    return refuse();
  };
}

const refused = (page: Page) => page.evaluate('window.refused');

const notice = (page: Page) => page.getByRole('region', { name: 'What is not kept' });

async function open(page: Page, address: string, how: () => void): Promise<string[]> {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  // Without pickers the screen saves by a download, which can be looked at.
  await page.addInitScript(() => Object.defineProperty(window, 'showSaveFilePicker', { value: undefined }));
  await page.addInitScript(how);
  await page.goto(address);
  await expect(page.getByRole('heading', { name: 'Draw your station' })).toBeVisible();
  return faults;
}

test('a browser that forbids storage: the app starts, says once what is not kept, and saves', async ({
  page,
  address,
}, info) => {
  const faults = await open(page, address, forbid);
  await expect(notice(page)).toContainText('This browser does not keep unsaved work: its settings forbid it.');
  await expect(notice(page)).toContainText('unit kinds, the theme and the label sheet');
  expect(await seriousProblems(page)).toEqual([]);
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  const download = page.waitForEvent('download');
  await notice(page).getByRole('button', { name: 'Save now' }).click();
  await download;
  await notice(page).getByRole('button', { name: 'Understood' }).click();
  await expect(notice(page)).toBeHidden();

  // Nothing else is different: drawing, theme, surveys, saving.
  await takeFromShelf(page, /^Paddle/, 'Paddle');
  await page.getByRole('combobox', { name: 'Theme' }).selectOption('Dark');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await stage(page, 'Check').click();
  await expect(unit(page, 'Paddle')).toBeVisible();
  expect((await saved(page, info.outputPath('a.station.json'))).units.length).toBe(2);
  await expect(notice(page)).toBeHidden();
  expect(faults).toEqual([]);
});

test('a browser that has no room left says so at the first change that it can’t keep', async ({ page, address }) => {
  const faults = await open(page, address, fill);
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  await expect(notice(page)).toContainText('This browser does not keep unsaved work: it has no room left.');
  await notice(page).getByRole('button', { name: 'Understood' }).click();
  expect(await refused(page)).toBe(1);
  await takeFromShelf(page, /^Paddle/, 'Paddle');
  // It has been tried again by then, in vain.
  await expect.poll(() => refused(page)).toBe(2);
  await expect(notice(page)).toBeHidden();
  expect(faults).toEqual([]);
});

test('a browser that keeps everything has nothing to say', async ({ page, address }) => {
  await open(page, address, () => {});
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  await expect.poll(() => keptTitles(page)).toHaveLength(1);
  await expect(notice(page)).toBeHidden();
});
