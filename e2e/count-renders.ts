import type { Page } from '@playwright/test';

declare global {
  interface Window {
    cardRenders: Record<string, number>;
    countCardRender(id: string): void;
  }
}

/**
 * Counts how often each unit's card is rendered, from before the page loads. The program has no counter: one is put
 * into its script on the way to the page, where a card begins the list of its classes.
 */
export async function countCardRenders(page: Page) {
  await page.addInitScript(() => {
    window.cardRenders = {};
    window.countCardRender = (id) => {
      window.cardRenders[id] = (window.cardRenders[id] ?? 0) + 1;
    };
  });
  await page.route('**/*.js', async (route) => {
    const response = await route.fetch();
    const script = await response.text();
    const body = script.replace(/\[(["'`])unit\1,(?=["'`]g-)/, '[(window.countCardRender(arguments[0].id), $1unit$1),');
    await route.fulfill({ response, body });
  });
}

/** How often each card was rendered since the last call, by the unit's id; then counts from nothing. */
export const takeCardRenders = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => {
    const taken = window.cardRenders;
    window.cardRenders = {};
    return taken;
  });
