import { readFile, writeFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { writeStation } from '../core/index.ts';
import { parseCsv } from '../test/reports/parse-csv.ts';
import { drawStation } from '../test/stations/draw.ts';
import { sample } from '../test/stations/samples.ts';
import { expect, test } from './browser.ts';
import { openFile, openFirstDraft, openScreen, stage } from './drawing.ts';
import { Keys } from './keys.ts';
import { hasPdfReader, printedPages } from './pdf-text.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';

const draft = sample('hut-first-draft');
const table = (page: Page) => page.getByRole('table', { name: 'Cables' });
const heading = (page: Page, name: string) => table(page).getByRole('columnheader', { name, exact: true });
const tab = (page: Page, name: string) => page.getByRole('tab', { name });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const numbers = (page: Page) =>
  table(page)
    .getByRole('textbox', { name: /^Number of/ })
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));

async function openCables(page: Page, address: string, theme: 'light' | 'dark' = 'light') {
  await openScreen(page, address, theme);
  await openFirstDraft(page);
  await stage(page, 'Cables').click();
  await expect(table(page)).toBeVisible();
}

test('the list is sorted by its headings and filtered by words and choices', async ({ page, address }) => {
  await openCables(page, address);
  const all = await numbers(page);
  expect([...all].sort()).toEqual(draft.cables.map((c) => c.number).sort());
  expect(all.slice(0, 5)).toEqual(['D1', 'D2', 'D3', 'D4', 'R1']);

  await heading(page, 'Length').getByRole('button').click();
  await expect(heading(page, 'Length')).toHaveAttribute('aria-sort', 'ascending');
  await heading(page, 'Length').getByRole('button').click();
  await expect(heading(page, 'Length')).toHaveAttribute('aria-sort', 'descending');
  // 4 m to the antenna, 3 m to the phones, 2 m to the arrestor.
  expect((await numbers(page)).slice(0, 3)).toEqual(['R7', 'A1', 'R6']);

  await page.getByRole('searchbox', { name: 'Filter the cables' }).fill('receiver');
  // Of the fused strip's third, and the two RF leads and phones of the receiver; R1 ends at a jack named so.
  expect((await numbers(page)).sort()).toEqual(['A1', 'D4', 'R1', 'R3']);
  await page.getByRole('combobox', { name: 'Class' }).selectOption('RF');
  expect((await numbers(page)).sort()).toEqual(['R1', 'R3']);
  await expect(page.getByText('13 cables are hidden by the filter.')).toBeVisible();
  await page.getByRole('button', { name: 'Show all' }).click();
  expect(await numbers(page)).toHaveLength(draft.cables.length);
});

test('cells are edited where they stand, and the open row has the rest', async ({ page, address }, info) => {
  await openCables(page, address);
  await field(page, 'Number of D4').fill('D1');
  await field(page, 'Number of D4').press('Enter');
  await expect(page.getByRole('alert').filter({ hasText: 'D1 is already taken.' })).toBeVisible();
  await field(page, 'Number of D4').fill('D9');
  await field(page, 'Number of D4').press('Enter');
  await field(page, 'Length of D9').fill('4 ft');
  await field(page, 'Length of D9').press('Enter');
  await expect(field(page, 'Length of D9')).toHaveValue('1.22 m');
  await page.getByRole('combobox', { name: 'Status of D9' }).selectOption('made');
  await field(page, 'Note on D9').fill('blue tape');
  await field(page, 'Note on D9').blur();
  await page.getByRole('button', { name: 'All of D9' }).click();
  const details = page.getByRole('region', { name: 'Details of D9' });
  await details.getByRole('combobox', { name: 'Fuse' }).selectOption('blade');
  await expect(table(page).getByRole('row', { name: /Fused strip · 3/ })).toContainText('3 A blade');

  const station = await saved(page, info.outputPath('edited.station.json'));
  expect(station.cables.find((c) => c.id === 'd4')).toMatchObject({
    number: 'D9',
    lengthM: 1.2192,
    status: 'made',
    note: 'blue tape',
    fuse: { family: 'blade', amps: 3 },
  });
});

test('cables are numbered by a scheme, and a locked number stays', async ({ page, address }, info) => {
  await openCables(page, address);
  await page.getByRole('checkbox', { name: 'Choose R2' }).check();
  await page.getByRole('button', { name: 'Lock numbers' }).click();
  await page.getByRole('button', { name: 'Choose none' }).click();
  await page.getByRole('button', { name: 'Number…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Number 15 cables' });
  await dialog.getByRole('combobox', { name: 'Numbers' }).selectOption({ label: 'in one row: 1, 2, 3' });
  await dialog.getByRole('combobox', { name: 'In the order' }).selectOption({ label: 'as they are listed now' });
  await expect(dialog.getByText('Locked, and so left: R2')).toBeVisible();
  await expect(dialog.getByRole('row')).toHaveCount(15);
  await dialog.getByRole('button', { name: 'Number them' }).click();
  await expect(dialog).toHaveCount(0);
  const station = await saved(page, info.outputPath('numbered.station.json'));
  const byId = Object.fromEntries(station.cables.map((c) => [c.id, c.number]));
  expect([byId['d1'], byId['d4'], byId['r1'], byId['r2'], byId['r3'], byId['e1']]).toEqual([
    '1',
    '4',
    '5',
    'R2',
    '6',
    '14',
  ]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(field(page, 'Number of D1')).toBeVisible();
});

test('what to make and to buy follow the list', async ({ page, address }) => {
  await openCables(page, address);
  await tab(page, 'To buy').click();
  const shopping = page.getByRole('table', { name: 'What to buy' });
  await expect(shopping.getByRole('row', { name: 'BNC plug 3 3 R1, R2' })).toBeVisible();
  await expect(shopping.getByRole('row', { name: /^RG-58 9\.6 m 8\.68 m/ })).toBeVisible();
  // 8.68 m and a quarter more: 10.85 m.
  await field(page, 'Cable to spare, %').fill('25');
  await field(page, 'Cable to spare, %').press('Enter');
  await expect(shopping.getByRole('row', { name: /^RG-58 10\.9 m/ })).toBeVisible();

  await tab(page, 'Cable list').click();
  await page.getByRole('combobox', { name: 'Status of R1' }).selectOption('tested');
  await tab(page, 'To make').click();
  const make = page.getByRole('table', { name: 'What to make' });
  await expect(make.getByRole('row', { name: /^R1 / })).toBeVisible();
  await page.getByRole('checkbox', { name: 'Leave out what is made or tested' }).check();
  await expect(make.getByRole('row', { name: /^R1 / })).toHaveCount(0);
  await expect(make.getByRole('row', { name: /^R2 / })).toBeVisible();
  await tab(page, 'To buy').click();
  await expect(shopping.getByRole('row', { name: 'BNC plug 1 1 R2' })).toBeVisible();
});

test('a table is exported as CSV', async ({ page, address }, info) => {
  await openCables(page, address);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export as CSV' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('hut-30-m-first-draft-cables.csv');
  await file.saveAs(info.outputPath('cables.csv'));
  const [head, ...rows] = parseCsv((await readFile(info.outputPath('cables.csv'), 'utf8')).replace('\uFEFF', ''));
  expect(head?.[0]).toBe('No.');
  expect(rows.map(([number]) => number).sort()).toEqual(draft.cables.map((c) => c.number).sort());
});

test('tabs, sorting and fields work by keys alone', async ({ page, address }) => {
  await openCables(page, address);
  const keys = new Keys(page);
  await keys.tabTo(tab(page, 'Cable list'));
  await keys.press('ArrowRight');
  await expect(page.getByRole('table', { name: 'What to make' })).toBeVisible();
  await keys.press('End');
  await expect(tab(page, 'Flags')).toBeFocused();
  await keys.press('Home');
  await keys.tabTo(heading(page, 'No.').getByRole('button'));
  await keys.press('Enter');
  await expect(heading(page, 'No.')).toHaveAttribute('aria-sort', 'ascending');
  expect((await numbers(page))[0]).toBe('A1');
  await keys.fill(field(page, 'Note on A1'), 'black');
  await expect(field(page, 'Note on A1')).toHaveValue('black');
  await keys.tabTo(page.getByRole('button', { name: 'All of A1' }));
  await keys.press('Enter');
  await expect(page.getByRole('region', { name: 'Details of A1' })).toBeVisible();
});

for (const format of ['A4', 'Letter'] as const) {
  test(`the printed list has every cable once, on ${format}`, async ({ page, address }, info) => {
    test.skip(!hasPdfReader, 'pdftotext is not installed');
    await openCables(page, address);
    const pages = await printedPages(page, info.outputPath('list.pdf'), format);
    const words = pages.flatMap((p) => p.words.map((word) => word.text));
    for (const { number } of draft.cables)
      expect(
        words.filter((word) => word === number),
        number,
      ).toHaveLength(1);
    for (const printed of pages) {
      for (const { text, xMm } of printed.words) expect(xMm, text).toBeLessThan(printed.widthMm - 10);
    }
  });
}

test('both flags of every cable are printed, and the test page keeps to size', async ({ page, address }, info) => {
  test.skip(!hasPdfReader, 'pdftotext is not installed');
  await openCables(page, address);
  await tab(page, 'Flags').click();
  await field(page, 'First free label').fill('20');
  await field(page, 'First free label').press('Enter');
  await expect(page.getByText('30 flags on 2 pages')).toBeVisible();
  const pages = await printedPages(page, info.outputPath('flags.pdf'));
  expect(pages).toHaveLength(2);
  const words = pages.flatMap((p) => p.words.map((word) => word.text));
  for (const { number } of draft.cables)
    expect(
      words.filter((word) => word === number),
      number,
    ).toHaveLength(2);
  // The twentieth label of four columns is the last of the fifth row.
  const [first] = pages[0]!.words.filter((word) => word.text === 'A1');
  expect(first!.xMm).toBeGreaterThan(8 + (3 * 194) / 4);

  await page.getByRole('combobox', { name: 'Page' }).selectOption('Letter');
  await page.getByRole('button', { name: 'Test page' }).click();
  const [ruler] = await printedPages(page, info.outputPath('ruler.pdf'));
  // 8.5 by 11 inches.
  expect(ruler!.widthMm).toBeCloseTo(215.9, 0);
  expect(ruler!.heightMm).toBeCloseTo(279.4, 0);
  const down = ['10', '90'].map(
    (text) => ruler!.words.filter((word) => word.text === text).sort((a, b) => b.yMm - a.yMm)[0]!,
  );
  const across = ['10', '90'].map(
    (text) => ruler!.words.filter((word) => word.text === text).sort((a, b) => a.yMm - b.yMm)[0]!,
  );
  expect(down[1]!.yMm - down[0]!.yMm).toBeCloseTo(80, 0);
  expect(across[1]!.xMm - across[0]!.xMm).toBeCloseTo(80, 0);
});

test('flags say which text is too long, and the sheet is remembered', async ({ page, address }) => {
  await openCables(page, address);
  await tab(page, 'Flags').click();
  await page.getByRole('combobox', { name: 'Flags' }).selectOption('folded labels');
  await expect(page.getByText(/^The flag of R3 at Changeover · transmitter is too long for \d/)).toBeVisible();
  await field(page, 'Columns').fill('2');
  await field(page, 'Columns').press('Enter');
  await expect(page.getByText(/is too long/)).toHaveCount(0);
  await field(page, 'Left margin, mm').fill('300');
  await field(page, 'Left margin, mm').press('Enter');
  await expect(page.getByText('The margins leave nothing of the page.')).toBeVisible();
  await page.reload();
  await stage(page, 'Cables').click();
  await tab(page, 'Flags').click();
  await expect(field(page, 'Columns')).toHaveValue('2');
  await expect(page.getByRole('combobox', { name: 'Flags' })).toHaveValue('wrap');
});

test('plugs with many contacts are drawn from the solder side', async ({ page, address }, info) => {
  await openScreen(page, address);
  const station = drawStation({
    units: { radio: 'transceiver-100w', other: 'transceiver-qrp-10w' },
    cables: ['radio.microphone > other.microphone'],
  });
  const file = info.outputPath('many.station.json');
  await writeFile(file, writeStation(station));
  await openFile(page, file);
  await stage(page, 'Cables').click();
  await tab(page, 'To make').click();
  const wiring = page.getByRole('region', { name: 'Wiring of K1' });
  await expect(wiring.getByRole('row')).toHaveCount(9);
  await expect(wiring.getByRole('img', { name: '8-way microphone plug, seen from the solder side' })).toHaveCount(2);
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way of screen readers and weak eyes, ${theme}`, async ({ page, address }) => {
    await openCables(page, address, theme);
    await page.getByRole('button', { name: 'All of D4' }).click();
    expect(await seriousProblems(page), 'list').toEqual([]);
    await page.getByRole('button', { name: 'Number…' }).click();
    expect(await seriousProblems(page), 'number').toEqual([]);
    await page.keyboard.press('Escape');
    for (const name of ['To make', 'To buy', 'Flags']) {
      await tab(page, name).click();
      expect(await seriousProblems(page), name).toEqual([]);
    }
    await page.getByRole('button', { name: 'Test page' }).click();
    expect(await seriousProblems(page), 'test page').toEqual([]);
  });
}
