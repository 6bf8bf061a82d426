import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { middleOf, openFile, openSample, openScreen, port, stage } from './drawing.ts';
import { Keys } from './keys.ts';

const tab = (page: Page, name: RegExp) => page.getByRole('tab', { name });
const sheet = (page: Page, name: string) => page.getByRole('complementary', { name });
const severities = (page: Page) => sheet(page, 'Mix-ups').getByRole('article').getByRole('img').first();

async function openHut(page: Page, address: string) {
  await openScreen(page, address);
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  await stage(page, 'Check').click();
}

test('what a hand could mix up is listed, worst on top, and shown as it would lie', async ({ page, address }) => {
  await openHut(page, address);
  await tab(page, /^Mix-ups/).click();
  const mixUps = sheet(page, 'Mix-ups');
  await expect(mixUps.getByRole('status')).toContainText(/\d+ things a hand could do wrong tried; \d+ do no harm/);
  await expect(tab(page, /^Mix-ups \d+$/)).toBeVisible();
  await expect(severities(page)).toHaveAccessibleName('danger');
  const first = mixUps.getByRole('article').first();
  const words = await first.getByRole('heading').textContent();
  const cables = words?.match(/\b[A-Z]\d+\b/g) ?? [];
  expect(cables.length).toBeGreaterThan(0);
  await expect(page.locator('.wrong-way')).toHaveCount(0);
  await first.hover();
  await expect(page.locator('.wrong-way')).toHaveCount(new Set(cables).size);
  await expect(page.locator('.cable.astray')).toHaveCount(new Set(cables).size);
  await first.getByRole('button').first().click();
  await expect(first.getByRole('button', { name: 'Show it' })).toBeVisible();
  await mixUps.getByRole('button', { name: /danger$/ }).click();
  await expect(severities(page)).not.toHaveAccessibleName('danger');
  await tab(page, /^Findings/).click();
  await expect(page.locator('.wrong-way')).toHaveCount(0);
});

test('the three lists by keys alone, and what comes of each single failure with its cure', async ({
  page,
  address,
}) => {
  const keys = new Keys(page);
  await openHut(page, address);
  await keys.tabTo(tab(page, /^Findings/));
  await page.keyboard.press('End');
  await expect(tab(page, /^If it fails/)).toBeFocused();
  const failures = sheet(page, 'If it fails');
  await expect(failures.getByRole('status')).toContainText(/\d+ single failures tried; \d+ show nothing/);
  await expect(failures.getByText('What would cure it.').first()).toBeVisible();
  const first = failures.getByRole('article').first();
  await keys.tabTo(first.getByRole('button').first());
  await expect(page.locator('.unit.marked, .cable.marked').first()).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(first.getByRole('list', { name: 'Where' })).toBeVisible();
  await keys.tabTo(tab(page, /^If it fails/));
  await page.keyboard.press('ArrowLeft');
  await expect(tab(page, /^Mix-ups/)).toBeFocused();
  const mixUps = sheet(page, 'Mix-ups');
  await expect(mixUps.getByRole('status')).toContainText('do no harm');
  await keys.tabTo(mixUps.getByRole('article').first().getByRole('button').first());
  await expect(page.locator('.wrong-way').first()).toBeVisible();
});

test('a long study says how far it is, is stopped, and begins again', async ({ page, address }) => {
  await openScreen(page, address);
  await openFile(page, 'core/samples/club-hall.station.json');
  await stage(page, 'Check').click();
  await tab(page, /^Mix-ups/).click();
  const mixUps = sheet(page, 'Mix-ups');
  await expect(mixUps.getByText(/^[\d,]+ of [\d,]+ tried$/)).toBeVisible({ timeout: 60_000 });
  await mixUps.getByRole('button', { name: 'Stop' }).click();
  await expect(mixUps.getByText('Stopped.')).toBeVisible();
  await expect(mixUps.getByRole('article')).toHaveCount(0);
  await expect(mixUps).not.toContainText('do no harm');
  await expect(tab(page, /^Mix-ups$/)).toBeVisible();
  await mixUps.getByRole('button', { name: 'Begin again' }).click();
  await expect(mixUps.getByRole('button', { name: 'Stop' })).toBeVisible();
});

test('rings are shown, applied as one step, and the study says what is left', async ({ page, address }) => {
  await openHut(page, address);
  await tab(page, /^Mix-ups/).click();
  const mixUps = sheet(page, 'Mix-ups');
  const apply = mixUps.getByRole('button', { name: /^Apply \d+ measures$/ });
  await expect(apply).toBeVisible();
  const rings = page.getByRole('main').locator('.port-ring');
  await expect(rings).toHaveCount(0);
  await apply.hover();
  const measures = await mixUps.getByRole('checkbox').count();
  await expect(rings).toHaveCount(measures);
  await apply.click();
  await expect(rings).toHaveCount(measures);
  await expect(
    page
      .getByRole('main')
      .getByRole('button', { name: /, ring blue$/ })
      .first(),
  ).toBeVisible();
  await expect(mixUps.getByRole('status')).toContainText('more are told by rings');
  // What is left is what no ring tells: the cores on the supply’s posts.
  await expect(mixUps.getByText('1 mix-up that injures or destroys is left')).toBeVisible();
  await expect(mixUps.getByRole('article').filter({ has: page.getByRole('img', { name: 'danger' }) })).toHaveCount(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(rings).toHaveCount(0);
  await expect(apply).toBeVisible();
});

test('what a cable would bring is said while it is dragged, and in the list of partners', async ({ page, address }) => {
  await openScreen(page, address);
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  const effect = page.locator('.laying-effect');
  const [strip, antenna] = [port(page, 'Fused strip', '4'), port(page, 'Receiver', 'antenna')];
  await strip.hover();
  const [start, end] = [await middleOf(strip), await middleOf(antenna)];
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 3 });
  await page.mouse.move(end.x, end.y, { steps: 3 });
  await expect(effect).toHaveText(/^It would bring a danger: .*Receiver · antenna/);
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 3 });
  await expect(effect).toHaveText('');
  await page.keyboard.press('Escape');
  await page.mouse.up();

  await strip.focus();
  await page.keyboard.press('Enter');
  const list = page.getByRole('dialog', { name: /^Join Fused strip/ });
  await page.keyboard.type('receiver antenna');
  await expect(list.getByText(/^It would bring a danger: .*Receiver · antenna/)).toBeVisible();
});
