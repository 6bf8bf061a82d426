import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openSample, openScreen, takeFromShelf, unit } from './drawing.ts';
import { keptTitles } from './kept-titles.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';

const offer = (page: Page) => page.getByRole('dialog', { name: 'Bring back unsaved work?' });
const rows = (page: Page) => offer(page).getByRole('listitem');
const bringBack = (page: Page, title: string) =>
  offer(page).getByRole('button', { name: `Bring back ${title}`, exact: true });
const title = (page: Page) => page.getByRole('textbox', { name: 'Title', exact: true });

async function retitle(page: Page, text: string) {
  await title(page).fill(text);
  await page.keyboard.press('Tab');
}

/** The page as after a crash: its own question before leaving is not asked. */
async function loadAgain(page: Page) {
  page.on('dialog', (dialog) => void dialog.accept());
  await page.reload();
}

test('what was not saved is offered after the page is gone, and is as it was', async ({ page, address }) => {
  await openScreen(page, address);
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  // Nothing selected: the details are the station's.
  await page.getByRole('main').click({ position: { x: 5, y: 5 } });
  await retitle(page, 'Attic');
  await expect.poll(() => keptTitles(page)).toEqual(['Attic']);
  await loadAgain(page);
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page)).toContainText(/Attic.*today at \d\d:\d\d, 1 unit, 0 cables.*not in a file yet/);
  await expect(bringBack(page, 'Attic')).toBeFocused();
  expect(await seriousProblems(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await expect(unit(page, 'Straight key')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Attic');
  await expect(page.getByText('not saved yet')).toBeVisible();
  // It is the work of this tab again, under the same entry.
  await page.getByRole('main').click({ position: { x: 5, y: 5 } });
  await retitle(page, 'Loft');
  await expect.poll(() => keptTitles(page)).toEqual(['Loft']);
});

test('it is offered until it is saved', async ({ page, address }, info) => {
  await openScreen(page, address);
  await retitle(page, 'Attic');
  await expect.poll(() => keptTitles(page)).toEqual(['Attic']);
  await loadAgain(page);
  await offer(page).getByRole('button', { name: 'Decide later' }).click();
  await page.reload();
  await expect(rows(page)).toHaveCount(1);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Unsaved work from before (1)' }).click();
  await bringBack(page, 'Attic').click();
  await saved(page, info.outputPath('attic.station.json'));
  await expect.poll(() => keptTitles(page)).toEqual([]);
});

test('or undone, or given up for another document', async ({ page, address }) => {
  await openScreen(page, address);
  await retitle(page, 'Attic');
  await expect.poll(() => keptTitles(page)).toEqual(['Attic']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => keptTitles(page)).toEqual([]);
  await retitle(page, 'Cellar');
  await expect.poll(() => keptTitles(page)).toEqual(['Cellar']);
  await page.getByRole('button', { name: 'The hut, put right' }).click();
  await expect(page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true })).toBeFocused();
  await page.getByRole('button', { name: 'Discard changes' }).click();
  await expect(page.getByRole('heading', { name: 'Hut, 30 m', exact: true })).toBeVisible();
  await expect.poll(() => keptTitles(page)).toEqual([]);
});

test('or thrown away, which asks first', async ({ page, address }) => {
  await openScreen(page, address);
  await retitle(page, 'Attic');
  await expect.poll(() => keptTitles(page)).toEqual(['Attic']);
  await loadAgain(page);
  const throwAway = offer(page).getByRole('button', { name: 'Throw away Attic' });
  await throwAway.click();
  await expect(offer(page).getByRole('button', { name: 'Keep it' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(throwAway).toBeVisible();
  expect(await keptTitles(page)).toEqual(['Attic']);
  await throwAway.click();
  await offer(page).getByRole('button', { name: 'Throw away', exact: true }).click();
  await expect(offer(page)).toBeHidden();
  expect(await keptTitles(page)).toEqual([]);
});

for (const locks of ['with locks', 'without locks'] as const)
  test(`each tab has its own entry, and those of tabs that are alive are not offered, ${locks}`, async ({
    context,
    address,
  }) => {
    if (locks === 'without locks')
      await context.addInitScript(() => Object.defineProperty(Navigator.prototype, 'locks', { value: undefined }));
    const [first, second] = [await context.newPage(), await context.newPage()];
    for (const [page, name] of [
      [first, 'Attic'],
      [second, 'Cellar'],
    ] as const) {
      await openScreen(page, address);
      await retitle(page, name);
      await expect.poll(() => keptTitles(page)).toContain(name);
    }
    await second.close();
    const third = await context.newPage();
    await openScreen(third, address);
    await expect(rows(third)).toHaveCount(1);
    await bringBack(third, 'Cellar').click();
    await expect(third.getByRole('heading', { level: 1 })).toHaveText('Cellar');
    await first.close();
    await third.close();
    const last = await context.newPage();
    await openScreen(last, address);
    await expect(rows(last)).toHaveText([/^Cellar/, /^Attic/]);
    await bringBack(last, 'Attic').click();
    await expect(last.getByRole('heading', { level: 1 })).toHaveText('Attic');
    expect((await keptTitles(last)).sort()).toEqual(['Attic', 'Cellar']);
  });

test('an edit that comes in while others are being made is kept too: none waits for a pause', async ({
  page,
  address,
}) => {
  await openScreen(page, address);
  let n = 0;
  const typing = async () => {
    n += 1;
    await retitle(page, `Edit ${n}`);
    return (await keptTitles(page)).some((name) => name.startsWith('Edit'));
  };
  // Never a pause as long as the waiting time: an edit comes every few milliseconds.
  await expect.poll(typing, { intervals: [10] }).toBe(true);
});

test('a draft that the first version left is offered once', async ({ page, address }) => {
  const hut = await readFile('core/samples/hut.station.json', 'utf8');
  await openScreen(page, address);
  await page.evaluate((text) => localStorage.setItem('stationwright.draft', text), hut);
  await page.reload();
  await expect(rows(page)).toContainText(/Hut, 30 m.*some time ago/);
  await offer(page).getByRole('button', { name: 'Throw away Hut, 30 m' }).click();
  await offer(page).getByRole('button', { name: 'Throw away', exact: true }).click();
  await expect.poll(() => keptTitles(page)).toEqual([]);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Draw your station' })).toBeVisible();
  expect(await keptTitles(page)).toEqual([]);
  expect(await page.evaluate(() => localStorage.getItem('stationwright.draft'))).toBeNull();
});

test('what the reader refuses is not lost: it is listed as such and can be saved as it is', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  const text = '{ "format": "stationwright", "version": 1, "title": "Half';
  await page.evaluate((broken) => localStorage.setItem('stationwright.draft', broken), text);
  await page.reload();
  await expect(rows(page)).toContainText('It can’t be shown');
  const download = page.waitForEvent('download');
  await offer(page).getByRole('button', { name: 'Save as a file Unsaved work' }).click();
  const file = info.outputPath('broken.station.json');
  await (await download).saveAs(file);
  expect(await readFile(file, 'utf8')).toBe(text);
  // Another document in this tab does not take its place.
  await page.keyboard.press('Escape');
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  await loadAgain(page);
  await expect(rows(page)).toContainText('It can’t be shown');
});
