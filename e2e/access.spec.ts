import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen, stage, unit } from './drawing.ts';

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

async function seriousProblems(page: Page) {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter((v) => v.impact === 'serious' || v.impact === 'critical')
    .map(
      (v) =>
        `${v.id}: ${v.nodes
          .map((n) => n.target.join(' '))
          .slice(0, 5)
          .join('; ')}`,
    );
}

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
