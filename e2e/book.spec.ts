import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFirstDraft, openSample, openScreen } from './drawing.ts';
import { Keys } from './keys.ts';
import { seriousProblems } from './serious-problems.ts';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Station book' });

/** The browser's print dialog can't be driven from outside: what would be on paper is kept instead. */
async function keepPrinted(page: Page) {
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset['printed'] = document.querySelector('.book')?.textContent ?? '';
    };
  });
}

const printed = (page: Page) => page.locator('body').getAttribute('data-printed');

test('the book is printed with the parts that were chosen, by keys alone', async ({ page, address }) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  await expect(page.getByRole('navigation', { name: 'Stages' })).toContainText('open dangers');
  await keepPrinted(page);
  const keys = new Keys(page);
  await keys.press('Control+b');
  await expect(dialog(page)).toBeVisible();
  await keys.tabTo(dialog(page).getByRole('checkbox', { name: 'Units' }));
  await keys.press('Space');
  await keys.tabTo(dialog(page).getByRole('button', { name: 'Print' }));
  await keys.press('Enter');
  await expect.poll(() => printed(page)).toContain('Hut, 30 m, first draft');
  const text = (await printed(page)) ?? '';
  for (const words of ['Plus and minus are swapped', 'Cautions', 'D4', 'Changeover']) expect(text).toContain(words);
  expect(text).not.toContain('Set to');
  await expect(page.locator('.book')).toHaveCount(0);
});

test('the page of plugs that must not be exchanged says what is there and what would prevent it', async ({
  page,
  address,
}) => {
  await openScreen(page, address);
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  await keepPrinted(page);
  await page.getByRole('button', { name: 'Book', exact: true }).click();
  const boxes = dialog(page).getByRole('group', { name: 'What goes on paper' }).getByRole('checkbox');
  for (const box of await boxes.all()) await box.uncheck();
  await dialog(page).getByRole('checkbox', { name: 'Plugs that must not be exchanged' }).check();
  await dialog(page).getByRole('button', { name: 'Print' }).click();
  await expect.poll(() => printed(page), { timeout: 60_000 }).toContain('Plugs that must not be exchanged');
  const text = (await printed(page)) ?? '';
  for (const words of ['R2 and R3 exchanged at Changeover', 'Rings that would tell a hand of it', 'blue (BU)'])
    expect(text).toContain(words);
  expect(text).not.toContain('Not computed');
});

test('the drawing leaves as SVG that needs nothing else, and as PNG', async ({ page, address }, info) => {
  await openScreen(page, address, 'dark');
  await openFirstDraft(page);
  await page.getByRole('button', { name: 'Book', exact: true }).click();
  const take = async (button: string) => {
    const download = page.waitForEvent('download');
    await dialog(page).getByRole('button', { name: button }).click();
    const file = await download;
    await file.saveAs(info.outputPath(file.suggestedFilename()));
    return { name: file.suggestedFilename(), bytes: await readFile(info.outputPath(file.suggestedFilename())) };
  };
  const svg = await take('Drawing as SVG');
  expect(svg.name).toBe('hut-30-m-first-draft.svg');
  const text = svg.bytes.toString('utf8');
  expect(text).not.toMatch(/var\(|<foreignObject|href=|@import/);
  // It opens by itself, and its words are words.
  const shown = await page.context().newPage();
  await shown.goto(`data:image/svg+xml;base64,${svg.bytes.toString('base64')}`);
  await expect(shown.locator('text', { hasText: /^Changeover$/ })).toBeVisible();
  await expect(shown.locator('text', { hasText: /^D4$/ }).first()).toBeVisible();
  expect(
    await shown
      .locator('.s-body')
      .first()
      .evaluate((e) => getComputedStyle(e).fill),
  ).toBe('rgb(255, 255, 255)');

  const png = await take('Drawing as PNG');
  expect(png.name).toBe('hut-30-m-first-draft.png');
  const viewBox = /viewBox="[-\d.]+ [-\d.]+ ([\d.]+) ([\d.]+)"/.exec(text)?.slice(1).map(Number) ?? [];
  // Width and height stand in the header of a PNG (ISO/IEC 15948, 11.2.2).
  expect([png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)]).toEqual(viewBox.map((v) => Math.round(2 * v)));
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious is in the way in the book's dialog, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    await openFirstDraft(page);
    await page.keyboard.press('Control+b');
    await expect(dialog(page)).toBeVisible();
    expect(await seriousProblems(page)).toEqual([]);
  });
}
