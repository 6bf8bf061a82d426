import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { layCable, middleOf, openFirstDraft, openScreen, port, takeFromShelf, unit, withGliding } from './drawing.ts';
import { saved } from './saved.ts';

const details = (page: Page) => page.getByRole('complementary', { name: 'Details' });
const flag = (page: Page, number: string) => page.getByRole('main').getByText(number, { exact: true });

/** Drags from the middle of one place to a point. */
async function drag(page: Page, from: { x: number; y: number }, to: { x: number; y: number }) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
}

test('a flag that is pulled to another port takes its end of the cable there', async ({ page, address }, info) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  // The first draft's mistake: the two leads at the changeover box are swapped.
  const at = (s: Awaited<ReturnType<typeof saved>>, number: string) => s.cables.find((c) => c.number === number);
  const before = await saved(page, info.outputPath('before.station.json'));
  expect(at(before, 'K2')?.b).toEqual({ unit: 'changeover', port: 'line' });
  await drag(page, await middleOf(flag(page, 'K2').nth(1)), await middleOf(port(page, 'Changeover', 'mute')));
  const after = await saved(page, info.outputPath('after.station.json'));
  expect(at(after, 'K2')).toMatchObject({
    b: { unit: 'changeover', port: 'mute' },
    lengthM: at(before, 'K2')?.lengthM,
  });
  // Let go over free paper it stays where it is.
  await drag(page, await middleOf(flag(page, 'K2').nth(0)), { x: 330, y: 600 });
  expect(await saved(page, info.outputPath('third.station.json'))).toEqual(after);
  await page.keyboard.press('Control+z');
  expect(await saved(page, info.outputPath('undone.station.json'))).toEqual(before);
});

test('a cable dropped on free paper offers the units that could go there', async ({ page, address }, info) => {
  await openScreen(page, address);
  await takeFromShelf(page, /^Paddle/, 'Paddle');
  await drag(page, await middleOf(port(page, 'Paddle', '')), { x: 700, y: 400 });
  const list = page.getByRole('dialog', { name: /^Join Paddle/ });
  await list.getByRole('option', { name: /^new unit Keyer/ }).click();
  await expect(unit(page, 'Keyer')).toBeVisible();
  const place = await middleOf(port(page, 'Keyer', 'paddle'));
  expect(Math.abs(place.x - 700)).toBeLessThan(20);
  expect(Math.abs(place.y - 400)).toBeLessThan(20);
  const station = await saved(page, info.outputPath('a.station.json'));
  expect(station.cables[0]).toMatchObject({ a: { unit: 'paddle' }, b: { unit: 'keyer', port: 'paddle' } });
  await page.keyboard.press('Control+z');
  await expect(unit(page, 'Keyer')).toHaveCount(0);
});

test('a unit dropped on a cable goes into it; by keys it is put in from the cable’s details', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  const cable = await middleOf(flag(page, 'R2').first());
  const shelf = page.getByRole('complementary', { name: 'Shelf' });
  await shelf.getByRole('searchbox').fill('power meter 200');
  const paper = await page.getByRole('main').boundingBox();
  await shelf.getByRole('button', { name: /^SWR and power meter, 200 W/ }).dragTo(page.getByRole('main'), {
    targetPosition: { x: cable.x - (paper?.x ?? 0), y: cable.y - (paper?.y ?? 0) },
  });
  const station = await saved(page, info.outputPath('a.station.json'));
  const meter = station.units.at(-1);
  const first = station.cables.find((c) => c.number === 'R2');
  expect([first?.a.unit, first?.b.unit]).toEqual(['changeover', meter?.id]);
  expect(station.cables.some((c) => c.a.unit === meter?.id && c.b.unit === 'meter')).toBe(true);

  await flag(page, 'K2').first().click();
  await details(page).getByRole('button', { name: 'Put a unit into it' }).press('Enter');
  await expect(page.getByRole('dialog', { name: /^Put a unit into/ })).toBeVisible();
  await page.keyboard.type('keying adapter');
  await page.keyboard.press('Enter');
  const second = await saved(page, info.outputPath('b.station.json'));
  expect(second.units.at(-1)?.kind).toBe('keying-adapter');
  expect(second.cables.length).toBe(station.cables.length + 1);
});

test('an end is moved, a plug changed and an adapter fitted in a cable’s details', async ({ page, address }, info) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  await flag(page, 'K2').first().click();
  await details(page)
    .getByRole('button', { name: /^Move the end at Changeover/ })
    .press('Enter');
  const list = page.getByRole('dialog', { name: /^Join/ });
  await expect(list).toBeVisible();
  await page.keyboard.type('changeover mute');
  await page.keyboard.press('Enter');
  await expect(list).toHaveCount(0);
  await expect(details(page).getByRole('button', { name: 'Changeover · mute', exact: true })).toBeVisible();
  await details(page)
    .getByRole('combobox', { name: 'Plug, to' })
    .selectOption({ label: '3.5 mm mono plug, by an adapter' });
  await details(page).getByRole('button', { name: 'fit it' }).click();
  await expect(details(page).getByText(/^Adapter fitted/)).toBeVisible();
  const station = await saved(page, info.outputPath('a.station.json'));
  expect(station.cables.find((c) => c.number === 'K2')).toMatchObject({
    b: { unit: 'changeover', port: 'mute' },
    plugs: { b: 'mono-35-plug' },
    adapters: { b: ['mono-35-to-phono'] },
  });
  await flag(page, 'D2').first().click();
  await details(page).getByRole('textbox', { name: 'Wire' }).fill('0.75 mm2');
  await page.keyboard.press('Enter');
  const metric = await saved(page, info.outputPath('b.station.json'));
  expect(metric.cableKinds[metric.cables.find((c) => c.number === 'D2')?.kind ?? '']?.core).toEqual({ mm2: 0.75 });
});

test('notes and zones are drawn, sized, named and removed', async ({ page, address }, info) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  await unit(page, 'Receiver').click({ position: { x: 20, y: 8 } });
  await page.getByRole('button', { name: 'Zone', exact: true }).click();
  await details(page).getByRole('textbox', { name: 'Name' }).fill('Shelf on the wall');
  await page.keyboard.press('Enter');
  const zone = page.getByRole('group', { name: 'Zone Shelf on the wall' });
  await expect(zone).toBeVisible();
  const [card, around] = [await unit(page, 'Receiver').boundingBox(), await zone.boundingBox()];
  expect(around && card && around.x < card.x && around.width > card.width).toBe(true);

  const corner = zone.locator('.react-flow__resize-control');
  const from = await middleOf(corner);
  await drag(page, from, { x: from.x + 60, y: from.y + 40 });
  await expect.poll(async () => (await zone.boundingBox())?.width).toBeGreaterThan((around?.width ?? 0) + 40);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await zone.boundingBox())?.width).toBeCloseTo(around?.width ?? 0, 0);

  await page.getByRole('button', { name: 'Note', exact: true }).click();
  await details(page).getByRole('textbox', { name: 'Words' }).fill('Ask for the manual');
  await details(page).getByRole('textbox', { name: 'Words' }).blur();
  const note = page.getByRole('group', { name: 'Note Ask for the manual' });
  await expect(note).toBeVisible();
  const station = await saved(page, info.outputPath('a.station.json'));
  expect(station.marks?.map((m) => [m.type, m.text])).toEqual([
    ['zone', 'Shelf on the wall'],
    ['note', 'Ask for the manual'],
  ]);
  await details(page).getByRole('button', { name: 'Remove note' }).click();
  await expect(note).toHaveCount(0);
});

test('units are put in line, locked, turned round and tidied; a locked one stays', async ({ page, address }, info) => {
  await withGliding(page);
  await openScreen(page, address);
  await openFirstDraft(page);
  const first = await saved(page, info.outputPath('a.station.json'));
  const place = (s: typeof first, id: string) => s.units.find((u) => u.id === id)?.position;

  await unit(page, 'Receiver').click({ position: { x: 20, y: 8 } });
  await unit(page, 'Meter').click({ position: { x: 20, y: 8 }, modifiers: ['Shift'] });
  await details(page).getByRole('button', { name: 'Left edges' }).click();
  const inLine = await saved(page, info.outputPath('b.station.json'));
  expect(place(inLine, 'meter')?.x).toBe(place(first, 'receiver')?.x);
  expect(place(inLine, 'meter')?.y).toBe(place(first, 'meter')?.y);

  await unit(page, 'Receiver').click({ position: { x: 20, y: 8 } });
  await details(page).getByRole('button', { name: 'Lock in place' }).click();
  const locked = page.getByRole('group', { name: /^Receiver, .*locked in place/ });
  const before = await locked.boundingBox();
  const grip = { x: (before?.x ?? 0) + 20, y: (before?.y ?? 0) + 8 };
  await drag(page, grip, { x: grip.x + 90, y: grip.y + 40 });
  const held = await saved(page, info.outputPath('c.station.json'));
  expect(place(held, 'receiver')).toEqual(place(first, 'receiver'));

  await unit(page, 'Receiver').click({ position: { x: 20, y: 8 } });
  await details(page).getByText('Ports and their sides').click();
  await details(page).getByRole('combobox', { name: 'mute' }).selectOption('bottom');
  const turned = await saved(page, info.outputPath('d.station.json'));
  expect(turned.units.find((u) => u.id === 'receiver')?.sides).toEqual({ mute: 'bottom' });

  await page.getByRole('button', { name: 'Tidy', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /Tidy up/);
  const tidied = await saved(page, info.outputPath('e.station.json'));
  expect(place(tidied, 'receiver')).toEqual(place(first, 'receiver'));
  expect(place(tidied, 'supply')).not.toEqual(place(first, 'supply'));
});

test('units are copied as text and pasted with the cables among them, cut, and pasted into another window', async ({
  page,
  address,
  context,
}, info) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openScreen(page, address);
  await openFirstDraft(page);
  await unit(page, 'Paddle').click({ position: { x: 20, y: 8 } });
  await unit(page, 'Keyer').click({ position: { x: 20, y: 8 }, modifiers: ['Shift'] });
  await page.keyboard.press('Control+c');
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(JSON.parse(text)).toMatchObject({ format: 'stationwright' });
  await page.keyboard.press('Control+v');
  await expect(unit(page, 'Keyer 2')).toBeVisible();
  const station = await saved(page, info.outputPath('a.station.json'));
  expect(station.cables.some((c) => c.a.unit === 'paddle-2' && c.b.unit === 'keyer-2')).toBe(true);
  await page.keyboard.press('Control+x');
  await expect(unit(page, 'Keyer 2')).toHaveCount(0);

  const other = await context.newPage();
  await openScreen(other, address);
  await other.getByRole('main').click({ position: { x: 5, y: 5 } });
  await other.keyboard.press('Control+v');
  await expect(unit(other, 'Keyer 2')).toBeVisible();
  await expect(unit(other, 'Paddle 2')).toBeVisible();
});

test('dragging shows what a unit is in line with, and a cable of its snaps straight', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await takeFromShelf(page, /^Paddle/, 'Paddle');
  await takeFromShelf(page, /^Keyer/, 'Keyer');
  await layCable(page, ['Paddle', ''], ['Keyer', 'paddle']);
  const start = await unit(page, 'Keyer').boundingBox();
  const grip = { x: (start?.x ?? 0) + 20, y: (start?.y ?? 0) + 8 };
  const [own, other] = [await middleOf(port(page, 'Keyer', 'paddle')), await middleOf(port(page, 'Paddle', ''))];
  await page.mouse.move(grip.x, grip.y);
  await page.mouse.down();
  // Straight down its left edge stays in line with the other card's.
  await page.mouse.move(grip.x + 1, grip.y + 50, { steps: 6 });
  await expect(page.locator('.guides path').first()).toBeAttached();
  await page.mouse.move(grip.x + 200, grip.y + other.y - own.y + 4, { steps: 12 });
  await page.mouse.up();
  await expect(page.locator('.guides')).toHaveCount(0);
  const [after, still] = [await middleOf(port(page, 'Keyer', 'paddle')), await middleOf(port(page, 'Paddle', ''))];
  expect(after.y).toBeCloseTo(still.y, 1);
  const station = await saved(page, info.outputPath('a.station.json'));
  expect(station.units.find((u) => u.id === 'keyer')?.position.x).toBeGreaterThan(100);
});
