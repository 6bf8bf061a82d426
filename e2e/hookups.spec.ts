import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openSample, openScreen } from './drawing.ts';

const details = (page: Page) => page.getByRole('complementary', { name: 'Details' });
const table = (page: Page) => details(page).getByRole('table', { name: /^What differs between/ });

test.beforeEach(async ({ page, address }) => {
  await openScreen(page, address);
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
});

test('two hook-ups are compared: a row for each cable that differs, marked on the drawing, with a way there', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Compare two hook-ups' }).click();
  await expect(table(page).getByRole('columnheader')).toHaveText(['What', 'On the dummy load', 'On the air']);
  const r4 = table(page).getByRole('row').filter({ hasText: 'R4, Meter · antenna to Dummy load' });
  await expect(r4.getByRole('cell')).toHaveText(['plugged in', 'not']);
  const rows = (await table(page).getByRole('row').count()) - 1;
  await expect(page.locator('.cable.marked')).toHaveCount(rows);
  await r4.getByRole('button').hover();
  await expect(page.locator('.cable.marked')).toHaveCount(1);
  await page.getByRole('button', { name: 'Stop comparing' }).click();
  await page.mouse.move(300, 20);
  await expect(page.locator('.cable.marked')).toHaveCount(0);
});

test('a hook-up is copied with its cables as one step, named, and removed again', async ({ page }, info) => {
  await page.getByRole('button', { name: 'Copy hook-up On the dummy load' }).click();
  const picker = page.getByRole('combobox', { name: 'Hook-up', exact: true });
  await expect(picker.locator('option:checked')).toHaveText('On the dummy load, copy');
  const name = details(page).getByRole('textbox', { name: 'Hook-up 3' });
  await name.fill('On the air');
  await name.press('Enter');
  await expect(details(page).getByRole('alert')).toHaveText('There is a hook-up “On the air” already.');
  await name.fill('On the bench');
  await name.press('Enter');
  await expect(picker.locator('option:checked')).toHaveText('On the bench');

  await page.getByRole('button', { name: 'Compare two hook-ups' }).click();
  await page.getByRole('combobox', { name: 'With' }).selectOption('On the dummy load');
  await expect(details(page)).toContainText('They have the same cables and settings.');
  await page.getByRole('combobox', { name: 'With' }).selectOption('On the air');
  await expect(table(page)).toContainText('R4, Meter · antenna to Dummy load');

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await (await download).saveAs(info.outputPath('hut.station.json'));
  const saved = JSON.parse(await readFile(info.outputPath('hut.station.json'), 'utf8'));
  const copy = saved.hookups.find((h: { name: string }) => h.name === 'On the bench').id;
  expect(saved.cables.find((c: { id: string }) => c.id === 'r4').hookups).toContain(copy);

  await page.getByRole('button', { name: 'Remove hook-up On the bench' }).click();
  await expect(picker.locator('option')).toHaveText(['On the dummy load', 'On the air']);
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect(picker.locator('option')).toHaveText(['On the dummy load', 'On the air']);
});
