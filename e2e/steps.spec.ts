import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openScreen } from './drawing.ts';

const steps = (page: Page) => page.getByRole('dialog', { name: 'Steps' });
const row = (page: Page, name: RegExp) => steps(page).getByRole('button', { name });
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name, exact: true });

async function retitle(page: Page, title: string) {
  const field = page.getByRole('textbox', { name: 'Title' });
  await field.fill(title);
  await field.press('Enter');
  await expect(heading(page, title)).toBeVisible();
}

test('the steps are a list to go back and forth in, by mouse', async ({ page, address }) => {
  await openScreen(page, address);
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await expect(steps(page)).toContainText('Nothing was done yet.');
  await page.keyboard.press('Escape');
  await expect(steps(page)).toBeHidden();
  for (const title of ['One', 'Two', 'Three']) await retitle(page, title);
  await page.getByRole('combobox', { name: 'Mode' }).selectOption('voice');

  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await expect(row(page, /./)).toHaveCount(5);
  await expect(row(page, /4 ?Change plan/)).toHaveAttribute('aria-current', 'step');
  await row(page, /^2/).click();
  await expect(heading(page, 'Two')).toBeVisible();
  await expect(row(page, /^2/)).toHaveAttribute('aria-current', 'step');
  await expect(row(page, /undone/)).toHaveCount(2);
  await row(page, /As opened/).click();
  await expect(heading(page, 'New station')).toBeVisible();
  await row(page, /^4/).click();
  await expect(heading(page, 'Three')).toBeVisible();
  await expect(page.getByRole('combobox', { name: 'Mode' })).toHaveValue('voice');
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await expect(steps(page)).toBeHidden();
});

test('by keys: Ctrl J, arrows, Enter, and Escape goes back to where one was', async ({ page, address }) => {
  await openScreen(page, address);
  for (const title of ['One', 'Two', 'Three']) await retitle(page, title);
  const field = page.getByRole('textbox', { name: 'Title' });
  await field.focus();
  await page.keyboard.press('Control+j');
  await expect(row(page, /^3/)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(heading(page, 'Three')).toBeVisible();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect(heading(page, 'One')).toBeVisible();
  await expect(row(page, /^1/)).toBeFocused();
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await expect(heading(page, 'Three')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(steps(page)).toBeHidden();
  await expect(field).toBeFocused();
});

test('a long list scrolls to the present step', async ({ page, address }) => {
  await openScreen(page, address);
  const mode = page.getByRole('combobox', { name: 'Mode' });
  for (let i = 0; i < 30; i++) await mode.selectOption(i % 2 ? 'keying' : 'voice');
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
  await expect(row(page, /^30/)).toBeInViewport();
  await expect(row(page, /As opened/)).not.toBeInViewport();
});
