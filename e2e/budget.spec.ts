import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openSample, openScreen, stage } from './drawing.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';

const sheet = (page: Page) => page.getByRole('complementary', { name: 'Budget' });
const panel = (page: Page) => sheet(page).getByRole('region', { name: 'What if' });
const table = (page: Page, name: string) => sheet(page).getByRole('table', { name, exact: true });
const row = (page: Page, name: string, unit: string) =>
  table(page, name)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: unit }) });

async function openHutBudget(page: Page, address: string, theme: 'light' | 'dark' = 'light') {
  await openScreen(page, address, theme);
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  await stage(page, 'Budget').click();
  await expect(table(page, 'Supplies')).toBeVisible();
}

async function suppose(page: Page, field: string, text: string) {
  const box = panel(page).getByRole('textbox', { name: field });
  await box.fill(text);
  await box.press('Enter');
}

test('what if: both figures stand side by side, the way back is one button, and the document never hears of it', async ({
  page,
  address,
}, info) => {
  await openHutBudget(page, address);
  const before = await saved(page, info.outputPath('before.station.json'));
  await expect(row(page, 'Loads', 'Transmitter')).toContainText('620 mA');
  await expect(sheet(page).getByText(/^if /)).toHaveCount(0);

  // Half of 3.02 W: of the stage's 585 mA above its idle 35 mA there are √½ left.
  await suppose(page, 'Transmitter, power', '1.51 W');
  await expect(row(page, 'Loads', 'Transmitter')).toContainText('if 449 mA');
  await expect(row(page, 'Loads', 'Transmitter')).toContainText('620 mA');
  await expect(panel(page).getByRole('status')).toContainText('Transmitter 1.51 W in place of 3.02 W');

  // Half of the time at 40 % key down: a fifth.
  await suppose(page, 'Time spent sending', '50 %');
  await expect(panel(page).getByRole('status')).toContainText('50 % of the time sending in place of 33 %');
  await suppose(page, 'Bench supply, volts', '10.5');
  await expect(panel(page).getByRole('status')).toContainText('shows:');
  await expect(row(page, 'Supplies', 'Bench supply')).toContainText('if 10.4');

  await expect(page).toHaveTitle(/^Hut, 30 m/);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  expect(await saved(page, info.outputPath('during.station.json'))).toEqual(before);

  await panel(page).getByRole('button', { name: 'As drawn' }).click();
  await expect(sheet(page).getByText(/^if /)).toHaveCount(0);
  await expect(panel(page).getByRole('textbox', { name: 'Bench supply, volts' })).toHaveValue('13.80 V');
  await expect(panel(page).getByRole('button', { name: 'As drawn' })).toBeDisabled();
  expect(await saved(page, info.outputPath('after.station.json'))).toEqual(before);
});

test('what can’t be is refused with a sentence', async ({ page, address }) => {
  await openHutBudget(page, address);
  await suppose(page, 'Time spent sending', '150 %');
  await expect(panel(page).getByText('It has to be at most 100 %.')).toBeVisible();
  await suppose(page, 'Transmitter, power', '0 W');
  await expect(panel(page).getByText('It has to be at least 0.001 W.')).toBeVisible();
  await expect(sheet(page).getByText(/^if /)).toHaveCount(0);
});

test('the charts say in words what they show, and another way can be chosen', async ({ page, address }) => {
  await openHutBudget(page, address);
  const charts = sheet(page).locator('figure').getByRole('img');
  await expect(charts).toHaveCount(3);
  await expect(charts.nth(0)).toHaveAccessibleName(/Transmitter 35\.0 mA in receive, 620 mA sending/);
  await expect(charts.nth(1)).toHaveAccessibleName(
    /^Volts in steps from Bench supply, 13\.76 V, to Transmitter, 13\.67 V\..*Fuse of Fused strip · 1 20\.\d mV/,
  );
  await expect(charts.nth(2)).toHaveAccessibleName(/from Transmitter, \+34\.8 dBm, 3\.02 W, to Dummy load/);
  const way = sheet(page).getByRole('combobox', { name: 'Way shown part by part' });
  await expect(way.getByRole('option', { name: 'Transmitter · power (the worst)' })).toBeAttached();
  await way.selectOption({ label: 'Receiver · power' });
  await expect(charts.nth(1)).toHaveAccessibleName(/to Receiver, /);
  await expect(table(page, 'Parts of the way to Receiver')).toContainText('D4, minus core');
});

test('tables and charts are saved as files that other programs read', async ({ page, address }, info) => {
  await openHutBudget(page, address);
  const download = async (button: string) => {
    const coming = page.waitForEvent('download');
    await sheet(page).getByRole('button', { name: button }).click();
    const file = await coming;
    const path = info.outputPath(file.suggestedFilename());
    await file.saveAs(path);
    return { name: file.suggestedFilename(), text: await readFile(path, 'utf8') };
  };
  const branches = await download('Save branches as CSV');
  expect(branches.name).toBe('hut-30-m-branches.csv');
  expect(branches.text.split('\r\n').slice(0, -1)).toHaveLength(5);
  expect(branches.text).toMatch(/^Branch,Cable,Hook-up,/);

  await suppose(page, 'Time spent sending', '100 %');
  await expect(sheet(page).getByText(/^if /).first()).toBeVisible();
  const loads = await download('Save loads as CSV');
  expect(loads.text.match(/^as drawn,/gm)).toHaveLength(3);
  expect(loads.text.match(/^what if,/gm)).toHaveLength(3);

  const chart = await download('Save chart “Who draws what” as SVG');
  expect(chart.name).toBe('hut-30-m-who-draws-what.svg');
  const read = await page.evaluate((text) => {
    const svg = new DOMParser().parseFromString(text, 'image/svg+xml');
    return { root: svg.documentElement.nodeName, bars: svg.querySelectorAll('rect').length, text };
  }, chart.text);
  expect(read.root).toBe('svg');
  expect(read.bars).toBeGreaterThan(9);
  // It needs nothing of the app's page.
  expect(chart.text).not.toMatch(/var\(/);
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way of screen readers and weak eyes, what if or not, ${theme}`, async ({
    page,
    address,
  }) => {
    await openHutBudget(page, address, theme);
    expect(await seriousProblems(page)).toEqual([]);
    await suppose(page, 'Bench supply, volts', '12');
    await expect(row(page, 'Supplies', 'Bench supply')).toContainText('if ');
    expect(await seriousProblems(page)).toEqual([]);
  });
}

test('on paper the sheet is as wide as the page, in black on white', async ({ page, address }) => {
  await openHutBudget(page, address, 'dark');
  await page.emulateMedia({ media: 'print' });
  // A4 and Letter between their margins, in CSS pixels.
  for (const width of [688, 710]) {
    await page.setViewportSize({ width, height: 1000 });
    expect(await sheet(page).evaluate((node) => node.scrollWidth <= node.clientWidth)).toBe(true);
  }
  await expect(panel(page)).toBeHidden();
  await expect(sheet(page).getByRole('button', { name: /CSV$/ }).first()).toBeHidden();
  const ink = await sheet(page)
    .locator('.chart-solid')
    .first()
    .evaluate((node) => getComputedStyle(node).fill);
  expect(ink).toBe('rgb(0, 0, 0)');
});
