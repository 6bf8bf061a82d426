import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen, port, stage, unit } from './drawing.ts';
import { seriousProblems } from './serious-problems.ts';
import { tabTo } from './tab-to.ts';

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way of screen readers and weak eyes, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    expect(await seriousProblems(page)).toEqual([]);
    await openFirstDraft(page);
    for (const name of ['Draw', 'Check', 'Cables', 'Budget'] as const) {
      await stage(page, name).click();
      await page.waitForTimeout(400);
      expect(await seriousProblems(page), name).toEqual([]);
    }
  });
}

test('units are placed and a cable laid by keys alone', async ({ page, address }) => {
  await openScreen(page, address);
  const shelf = page.getByRole('complementary', { name: 'Shelf' });
  for (const [word, row] of [
    ['paddle', /^Paddle/],
    ['keyer', /^Keyer/],
  ] as const) {
    await tabTo(page, shelf.getByRole('searchbox'));
    await page.keyboard.press('Control+a');
    await page.keyboard.type(word);
    await tabTo(page, shelf.getByRole('button', { name: row }));
    await page.keyboard.press('Enter');
  }
  await tabTo(page, port(page, 'Paddle', ''));
  await page.keyboard.press('Enter');
  await tabTo(page, port(page, 'Keyer', 'paddle'));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('complementary', { name: 'Details' }).getByRole('heading', { name: 'K1' })).toBeVisible();
  await page.keyboard.press('3');
  await expect(page.getByRole('button', { name: 'K1', exact: true })).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('Delete');
  await expect(page.getByRole('button', { name: 'K1', exact: true })).toHaveCount(0);
});

test('a unit is selected and moved by keys, one step each', async ({ page, address }) => {
  await openScreen(page, address);
  await page
    .getByRole('complementary', { name: 'Shelf' })
    .getByRole('button', { name: /^Paddle/ })
    .click();
  const paddle = unit(page, 'Paddle');
  const before = await paddle.boundingBox();
  await paddle.focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => (await paddle.boundingBox())?.x).toBeGreaterThan((before?.x ?? 0) + 10);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await paddle.boundingBox())?.x).toBe(before?.x);
  await paddle.focus();
  await page.keyboard.press('Delete');
  await expect(paddle).toHaveCount(0);
});

test('a field that nothing was typed into leaves undo to the document', async ({ page, address }) => {
  await openScreen(page, address);
  const title = page.getByRole('textbox', { name: 'Title' });
  await title.fill('My station');
  await title.press('Enter');
  await expect(page.getByRole('heading', { name: 'My station' })).toBeVisible();
  await title.press('Control+z');
  await expect(page.getByRole('heading', { name: 'New station' })).toBeVisible();
});
