import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openScreen } from './drawing.ts';

/** A browser's file without a dialog of the system, which no test can answer: one of the page's own storage. */
async function offerFile(page: Page) {
  await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    const handle = await folder.getFileHandle('desk.station.json', { create: true });
    Object.assign(window, { showSaveFilePicker: async () => handle, showOpenFilePicker: async () => [handle] });
  });
}

const textOf = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle('desk.station.json')).getFile()).text();
  });

const write = (page: Page, text: string) =>
  page.evaluate(async (content) => {
    const folder = await navigator.storage.getDirectory();
    const writable = await (await folder.getFileHandle('desk.station.json')).createWritable();
    await writable.write(content);
    await writable.close();
  }, text);

const save = (page: Page) => page.keyboard.press('ControlOrMeta+s');

test('in a browser too, nothing is saved over what somebody else has written', async ({ page, address }) => {
  await openScreen(page, address);
  await offerFile(page);
  const title = page.getByRole('textbox', { name: 'Title', exact: true });
  await title.fill('Desk');
  await save(page);
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  const mine = await textOf(page);
  expect(JSON.parse(mine).title).toBe('Desk');

  await write(page, mine.replace('"Desk"', '"Their desk"'));
  await title.fill('My desk');
  await save(page);
  const asked = page.getByRole('dialog', { name: 'desk.station.json was changed by somebody else' });
  await expect(asked.getByRole('listitem')).toContainText(['Their desk']);
  await asked.getByRole('button', { name: 'Cancel' }).click();
  expect(JSON.parse(await textOf(page)).title).toBe('Their desk');

  await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  await asked.getByRole('button', { name: 'Load what is in the file' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Their desk');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();

  await page.evaluate(async () => (await navigator.storage.getDirectory()).removeEntry('desk.station.json'));
  await title.fill('Again');
  await save(page);
  await page
    .getByRole('dialog', { name: 'desk.station.json is gone' })
    .getByRole('button', { name: 'Not now' })
    .click();
  await expect(page.getByText('not saved yet')).toBeVisible();
});

test('what is being typed holds up the closing of the tab', async ({ page, address }) => {
  await openScreen(page, address);
  await page.getByRole('textbox', { name: 'Title', exact: true }).pressSequentially(' and more');
  const asked = page.waitForEvent('dialog');
  await page.close({ runBeforeUnload: true });
  const question = await asked;
  expect(question.type()).toBe('beforeunload');
  await question.dismiss();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('and more');
});
