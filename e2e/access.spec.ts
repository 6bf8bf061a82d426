import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFirstDraft, openSample, openScreen, port, stage, unit } from './drawing.ts';
import { seriousProblems } from './serious-problems.ts';

/** What stands there once a stage is drawn with all that is computed for it. */
const wholeStage = {
  Draw: (page: Page) => page.getByRole('button', { name: /^Open: .*go to Check$/ }),
  Check: (page: Page) => page.getByRole('region', { name: 'Key-down' }).getByRole('listitem').first(),
  Cables: (page: Page) => page.getByRole('table', { name: 'Cables' }),
  Budget: (page: Page) => page.getByRole('table', { name: 'Supplies', exact: true }),
  'Power-up': (page: Page) => page.getByText(/^Expect/).first(),
};

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way of screen readers and weak eyes, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    expect(await seriousProblems(page)).toEqual([]);
    await openFirstDraft(page);
    for (const name of ['Draw', 'Check', 'Cables', 'Budget', 'Power-up'] as const) {
      await stage(page, name).click();
      await expect(wholeStage[name](page)).toBeVisible();
      expect(await seriousProblems(page), name).toEqual([]);
    }
  });

  test(`nor in a fix previewed, findings filtered, the steps, and hook-ups compared, ${theme}`, async ({
    page,
    address,
  }) => {
    await openScreen(page, address, theme);
    await openFirstDraft(page);
    await stage(page, 'Check').click();
    await page.getByRole('button', { name: 'Plus and minus are swapped' }).click();
    await page.getByRole('button', { name: 'Preview' }).click();
    await expect(page.getByText('It removes this finding')).toBeVisible();
    await page.getByRole('button', { name: 'Accept it with a reason' }).click();
    await page.getByRole('button', { name: /note$/ }).click();
    await expect(page.getByText('hidden by the filter')).toBeVisible();
    expect(await seriousProblems(page), 'Check').toEqual([]);
    await page.getByRole('button', { name: 'Do it' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Steps', exact: true }).click();
    await expect(page.getByRole('dialog', { name: 'Steps' }).getByText('undone')).toBeVisible();
    expect(await seriousProblems(page), 'Steps').toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('combobox', { name: 'About' }).selectOption('everything');
    await stage(page, 'Draw').click();
    await page.getByRole('main').click({ position: { x: 12, y: 12 } });
    await page.getByRole('button', { name: 'Add a hook-up' }).click();
    await page.getByRole('button', { name: 'Copy hook-up On the air' }).click();
    await page.getByRole('button', { name: 'Compare two hook-ups' }).click();
    await expect(page.getByText('They have the same cables and settings.')).toBeVisible();
    expect(await seriousProblems(page), 'Hook-ups').toEqual([]);
  });
}

for (const theme of ['light', 'dark'] as const) {
  test(`nor in what a hand could mix up and what could fail, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    await openSample(page, 'The hut, put right', 'Hut, 30 m');
    await stage(page, 'Check').click();
    for (const name of ['Mix-ups', 'If it fails']) {
      await page.getByRole('tab', { name }).click();
      const sheet = page.getByRole('complementary', { name });
      await expect(sheet.getByRole('status')).toBeVisible();
      await sheet.getByRole('article').first().getByRole('button').first().click();
      expect(await seriousProblems(page), name).toEqual([]);
    }
  });

  test(`nor in the editor’s lists, notes, zones and details, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    await openFirstDraft(page);
    await page.keyboard.press('Control+k');
    expect(await seriousProblems(page), 'Find').toEqual([]);
    await page.keyboard.press('Escape');
    await port(page, 'Changeover', 'mute').press('Enter');
    await expect(page.getByRole('dialog', { name: /^Join/ })).toBeVisible();
    expect(await seriousProblems(page), 'Join').toEqual([]);
    await page.keyboard.press('Escape');
    await port(page, 'Changeover', 'mute').click();
    expect(await seriousProblems(page), 'a cable being laid').toEqual([]);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+a');
    await page.getByRole('button', { name: 'Zone', exact: true }).click();
    await page.getByRole('button', { name: 'Map', exact: true }).click();
    expect(await seriousProblems(page), 'a zone, and the map').toEqual([]);
    await page.keyboard.press('Control+a');
    expect(await seriousProblems(page), 'several selected').toEqual([]);
    await page.getByRole('main').getByText('R2', { exact: true }).first().click();
    await page.getByRole('button', { name: 'Put a unit into it' }).click();
    expect(await seriousProblems(page), 'a unit to put in').toEqual([]);
    await page.keyboard.press('Escape');
    expect(await seriousProblems(page), 'a cable’s details').toEqual([]);
    await unit(page, 'Receiver').click({ position: { x: 20, y: 8 } });
    await page.getByText('Ports and their sides').click();
    expect(await seriousProblems(page), 'a unit’s details').toEqual([]);
  });
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
