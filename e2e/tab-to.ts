import type { Locator, Page } from '@playwright/test';

/** Presses Tab until the element has the focus. */
export async function tabTo(page: Page, element: Locator) {
  for (let i = 0; i < 150; i++) {
    if (await element.evaluate((node) => node === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not get there');
}
