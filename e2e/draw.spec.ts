import { readFile } from 'node:fs/promises';
import { expect, test } from './browser.ts';
import { layCable, openFile, openScreen, port, stage, takeFromShelf, unit } from './drawing.ts';

test('a station is drawn by hand, its missing mute line reported and laid, saved and opened again', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await expect(page.getByRole('heading', { name: 'Draw your station' })).toBeVisible();

  await takeFromShelf(page, /^Bench supply/, 'Bench supply');
  await takeFromShelf(page, /^Fused strip/, 'Fused strip');
  await takeFromShelf(page, /^CW transmitter, 3 W/, 'CW transmitter');
  await takeFromShelf(page, /^Receiver with mute/, 'Receiver with mute');
  await takeFromShelf(page, /^Changeover by/, 'Changeover by its line');
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  await takeFromShelf(page, /^Wire antenna/, 'Wire antenna');
  await page.getByRole('button', { name: 'Fit' }).click();

  await layCable(page, ['Bench supply', ''], ['Fused strip', 'in']);
  await layCable(page, ['Fused strip', '1'], ['CW transmitter', 'power']);
  await layCable(page, ['Fused strip', '2'], ['Receiver with mute', 'power']);
  await layCable(page, ['Fused strip', '3'], ['Changeover by its line', 'power']);
  await layCable(page, ['CW transmitter', 'antenna'], ['Changeover by its line', 'transmitter']);
  await layCable(page, ['Changeover by its line', 'receiver'], ['Receiver with mute', 'antenna']);
  await layCable(page, ['Changeover by its line', 'antenna'], ['Wire antenna', '']);
  await layCable(page, ['Straight key', ''], ['Changeover by its line', 'line']);
  await layCable(page, ['Changeover by its line', 'key out'], ['CW transmitter', 'key']);

  // This receiver has its minus on the pin: the lead is proposed that way round. A straight one would be a mistake.
  await port(page, 'Receiver with mute', 'power').click();
  await page.keyboard.press('Escape');
  await page.getByRole('main').getByText('D3', { exact: true }).first().click();
  await expect(page.getByRole('combobox', { name: 'Wiring' })).toHaveValue('swapped');
  await page.getByRole('combobox', { name: 'Wiring' }).selectOption('straight');
  await stage(page, 'Check').click();
  const reversed = page.getByRole('button', { name: 'Plus and minus are swapped' });
  await reversed.click();
  await page.getByRole('button', { name: 'D3', exact: true }).click();
  await stage(page, 'Draw').click();
  await page.getByRole('combobox', { name: 'Wiring' }).selectOption('swapped');
  await stage(page, 'Check').click();
  await expect(reversed).toHaveCount(0);
  const notMuted = page.getByRole('button', { name: 'The receiver is not muted while the station sends' });
  await expect(notMuted).toBeVisible();

  await stage(page, 'Draw').click();
  await layCable(page, ['Changeover by its line', 'mute'], ['Receiver with mute', 'mute']);
  await stage(page, 'Check').click();
  await expect(notMuted).toHaveCount(0);

  await stage(page, 'Cables').click();
  await expect(page.getByRole('table', { name: 'Cables' }).getByRole('row')).toHaveCount(12);

  const first = await save(page, info.outputPath('first.station.json'));
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  await page.reload();
  await openFile(page, info.outputPath('first.station.json'));
  await expect(unit(page, 'Straight key')).toBeVisible();
  expect(await save(page, info.outputPath('second.station.json'))).toBe(first);
});

test('dragging a unit is one step back', async ({ page, address }) => {
  await openScreen(page, address);
  await takeFromShelf(page, /^Straight key/, 'Straight key');
  const key = unit(page, 'Straight key');
  const before = await key.boundingBox();
  if (!before) throw new Error('not drawn');
  await page.mouse.move(before.x + 30, before.y + 10);
  await page.mouse.down();
  await page.mouse.move(before.x + 130, before.y + 110, { steps: 8 });
  await page.mouse.up();
  await expect.poll(async () => (await key.boundingBox())?.x).toBeGreaterThan(before.x + 60);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await key.boundingBox())?.x).toBeCloseTo(before.x, 0);
  await page.keyboard.press('Control+z');
  await expect(key).toHaveCount(0);
  await page.keyboard.press('Control+Shift+z');
  await expect(key).toBeVisible();
});

test('a unit is dragged from the shelf to the paper, and a wrong cable can be laid and is marked first', async ({
  page,
  address,
}) => {
  await openScreen(page, address);
  const shelf = page.getByRole('complementary', { name: 'Shelf' });
  const paper = page.getByRole('main');
  await shelf.getByRole('button', { name: /^Keyer/ }).dragTo(paper, { targetPosition: { x: 80, y: 90 } });
  await shelf.getByRole('button', { name: /^Headphones/ }).dragTo(paper, { targetPosition: { x: 450, y: 500 } });
  await port(page, 'Keyer', 'key out').click();
  await expect(port(page, 'Keyer', 'paddle')).toHaveAttribute('title', /./);
  await expect(page.getByRole('status')).toContainText('Keyer · key out starts a cable');
  await port(page, 'Headphones', '').click();
  await expect(page.getByRole('complementary', { name: 'Details' }).getByRole('heading', { name: 'K1' })).toBeVisible();
});

async function save(page: import('@playwright/test').Page, path: string) {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await (await download).saveAs(path);
  return readFile(path, 'utf8');
}
