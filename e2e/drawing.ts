import { expect, type Locator, type Page } from '@playwright/test';

/** The browser's file dialogs can't be driven from outside; without them the screen downloads and asks by an input. */
export async function openScreen(page: Page, address: string, theme: 'light' | 'dark' = 'light') {
  await page.addInitScript((wanted) => {
    Object.defineProperty(window, 'showSaveFilePicker', { value: undefined });
    Object.defineProperty(window, 'showOpenFilePicker', { value: undefined });
    localStorage.setItem('stationwright.theme', wanted);
  }, theme);
  await page.goto(address);
}

/** What is fitted, tidied or shown glides to where it belongs, and what is pointed out pulses. */
export const withGliding = (page: Page) => page.emulateMedia({ reducedMotion: 'no-preference' });

export async function openFirstDraft(page: Page) {
  await page.getByRole('button', { name: 'The hut, first draft: find the mistakes' }).click();
  await expect(page.getByRole('heading', { name: 'Hut, 30 m, first draft' })).toBeVisible();
  await expect(unit(page, 'Transmitter')).toBeVisible();
}

/** A unit's card on the drawing. */
export const unit = (page: Page, name: string) => page.getByRole('group', { name: new RegExp(`^${name}, `) });

/** A port, by unit and label: `port(page, 'Receiver', 'mute')`. */
export const port = (page: Page, unitName: string, label: string) =>
  page.getByRole('main').getByRole('button', { name: new RegExp(`^${unitName}, ${label}`) });

/** Takes a unit from the shelf by a click on its row. */
export async function takeFromShelf(page: Page, row: RegExp, name: string) {
  await page.getByRole('complementary', { name: 'Shelf' }).getByRole('button', { name: row }).click();
  await expect(unit(page, name)).toBeVisible();
}

/** Drags a cable from port to port with the mouse. */
export async function layCable(page: Page, from: [string, string], to: [string, string]) {
  // Hovering waits until the drawing stands still.
  await port(page, ...from).hover();
  const start = await middleOf(port(page, ...from));
  const end = await middleOf(port(page, ...to));
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 3 });
  await page.mouse.move(end.x, end.y, { steps: 3 });
  await page.mouse.up();
}

export async function middleOf(what: Locator) {
  const box = await what.boundingBox();
  if (!box) throw new Error(`${what} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export const stage = (page: Page, name: 'Draw' | 'Check' | 'Cables' | 'Budget' | 'Power-up') =>
  page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: new RegExp(name) });

/** Chooses a file where the screen asks for one. */
export async function openFile(page: Page, file: string) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await (await chooser).setFiles(file);
}

/** What the sample is opened by: its row on the empty paper. */
export async function openSample(page: Page, row: string, title: string) {
  await page.getByRole('button', { name: row }).click();
  await expect(page.getByRole('heading', { name: title, exact: true })).toBeVisible();
}
