import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen, unit } from './drawing.ts';

const hut = path.join(import.meta.dirname, '../core/samples/hut.station.json');

test('a file dropped on the window is opened', async ({ page, address }) => {
  await openScreen(page, address);
  const dropped = await page.evaluateHandle(
    (text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'hut.station.json', { type: 'application/json' }));
      return transfer;
    },
    await readFile(hut, 'utf8'),
  );
  await page.getByRole('main').dispatchEvent('drop', { dataTransfer: dropped });
  await expect(page.getByRole('heading', { name: 'Hut, 30 m' })).toBeVisible();
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
});

test('units are copied with the cable between them, into another window too', async ({ page, address, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openScreen(page, address);
  await openFirstDraft(page);
  await unit(page, 'Paddle').click({ position: { x: 30, y: 8 } });
  await unit(page, 'Keyer').click({ position: { x: 30, y: 8 }, modifiers: ['ControlOrMeta'] });
  await page.keyboard.press('ControlOrMeta+c');
  await page.keyboard.press('ControlOrMeta+v');
  await expect(unit(page, 'Keyer 2')).toBeVisible();
  await page.keyboard.press('ControlOrMeta+z');
  await expect(unit(page, 'Keyer 2')).toHaveCount(0);

  const other = await context.newPage();
  await openScreen(other, address);
  await other.keyboard.press('ControlOrMeta+v');
  await expect(unit(other, 'Keyer')).toBeVisible();
  await other.keyboard.press('3');
  await expect(other.getByRole('table', { name: 'Cables' })).toContainText('Paddle');
});
