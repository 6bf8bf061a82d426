import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen } from './drawing.ts';
import { Keys } from './keys.ts';
import { mistakes } from './mistakes.ts';

const findings = (page: Page) => page.getByRole('complementary', { name: 'Findings' });
const title = (page: Page, name: string) => findings(page).getByRole('button', { name, exact: true }).first();

test('every mistake of the first draft is found, seen and put right by keys alone', async ({ page, address }) => {
  const keys = new Keys(page);
  await openScreen(page, address);
  await openFirstDraft(page);
  await page.keyboard.press('2');
  for (const [name, place, fix, says] of mistakes) {
    await expect(title(page, name), name).toBeVisible();
    await keys.tabTo(title(page, name));
    if ((await title(page, name).getAttribute('aria-expanded')) === 'false') await page.keyboard.press('Enter');
    const article = findings(page)
      .getByRole('article')
      .filter({ has: page.getByRole('button', { name, exact: true }) })
      .first();
    await expect(
      article.getByRole('list', { name: 'Where' }).getByRole('button', { name: place, exact: true }),
    ).toBeVisible();
    const preview = article.getByRole('region', { name: fix });
    await expect(preview.getByRole('listitem').filter({ hasText: says })).toHaveCount(1);
    await keys.tabTo(preview.getByRole('button', { name: 'Preview' }));
    await page.keyboard.press('Enter');
    await expect(preview.getByRole('status')).toContainText('It removes this finding');
    await keys.tabTo(preview.getByRole('button', { name: 'Do it' }));
    await page.keyboard.press('Enter');
    await expect(preview, name).toHaveCount(0);
    // The focus has not fallen out of the list.
    await expect(findings(page).locator(':focus')).toHaveCount(1);
  }
  await expect(findings(page).getByLabel('Open findings by severity')).not.toContainText(
    /[1-9]\d* (danger|fault|doubt)/,
  );
  await page.keyboard.press('Control+j');
  const steps = page.getByRole('dialog', { name: 'Steps' });
  await expect(steps.getByRole('button')).toHaveCount(mistakes.length + 1);
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(steps.getByRole('button', { name: /As opened/ })).toHaveAttribute('aria-current', 'step');
  await page.keyboard.press('Escape');
  await expect(title(page, 'Plus and minus are swapped')).toBeVisible();
  await expect(page.getByText('not saved yet')).toHaveCount(0);
});
