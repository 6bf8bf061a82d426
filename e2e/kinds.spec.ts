import { readFile, writeFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { layCable, openScreen, port, takeFromShelf, unit } from './drawing.ts';
import { keptTitles } from './kept-titles.ts';
import { Keys } from './keys.ts';
import { seriousProblems } from './serious-problems.ts';

const shelf = (page: Page) => page.getByRole('complementary', { name: 'Shelf' });
const editor = (page: Page) => page.getByRole('dialog', { name: /unit kind|unit a kind/ });
const row = (page: Page, title: RegExp) => editor(page).locator('summary').filter({ hasText: title }).first();
const use = (page: Page) => editor(page).getByRole('button', { name: 'Use it' });

async function startFrom(page: Page, words: string, name: RegExp) {
  await shelf(page).getByRole('button', { name: 'Make a kind' }).click();
  await editor(page).getByRole('searchbox', { name: 'Start from a kind of the shelf' }).fill(words);
  await editor(page).getByRole('button', { name }).click();
}

async function importFile(page: Page, path: string) {
  const chooser = page.waitForEvent('filechooser');
  await shelf(page).getByRole('button', { name: 'Import', exact: true }).click();
  await (await chooser).setFiles(path);
}

test('a kind is made from one of the shelf, used, kept, exported, removed and imported again', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await startFrom(page, 'transmitter 5', /^CW transmitter, 5 W/);
  await editor(page).getByRole('textbox', { name: 'Name', exact: true }).fill('Blue transmitter');
  await row(page, /^antennaRF/).click();
  await editor(page).getByRole('combobox', { name: 'Connector' }).selectOption('N jack');
  await expect(row(page, /^antennaRF/)).toContainText('N jack');
  await row(page, /^Takes power/).click();
  await editor(page).getByRole('textbox', { name: 'Draws' }).first().fill('90 mA');
  await editor(page).getByRole('textbox', { name: 'Works from' }).fill('10.5');
  await use(page).click();

  await expect(unit(page, 'Blue transmitter')).toBeVisible();
  await expect(port(page, 'Blue transmitter', 'antenna, N jack')).toBeVisible();
  const details = page.getByRole('complementary', { name: 'Details' });
  await expect(details.getByRole('textbox', { name: 'Draws', exact: true })).toHaveValue('0.09 A');
  await expect(details).toContainText('own figures');
  await expect(details.getByText('typical')).toHaveCount(0);
  await expect(shelf(page).getByRole('button', { name: 'Place again: Blue transmitter' })).toBeVisible();

  await expect.poll(() => keptTitles(page)).toHaveLength(1);
  await page.reload();
  const kept = page.getByRole('dialog', { name: 'Bring back unsaved work?' });
  await kept.getByRole('button', { name: /^Throw away / }).click();
  await kept.getByRole('button', { name: 'Throw away', exact: true }).click();
  await shelf(page).getByRole('searchbox').fill('blue');
  await expect(shelf(page).getByRole('button', { name: /^Blue transmitter/ })).toBeVisible();

  const download = page.waitForEvent('download');
  await shelf(page).getByRole('button', { name: 'Export Blue transmitter' }).click();
  const file = info.outputPath('blue-transmitter.unit.json');
  expect((await download).suggestedFilename()).toBe('blue-transmitter.unit.json');
  await (await download).saveAs(file);
  await shelf(page).getByRole('button', { name: 'Remove Blue transmitter' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Remove' }).click();
  await expect(shelf(page).getByRole('button', { name: /^Blue transmitter/ })).toHaveCount(0);

  const text = await readFile(file, 'utf8');
  const damaged = info.outputPath('damaged.unit.json');
  await writeFile(damaged, text.replace('"power.centre"', '"power.middle"'));
  await importFile(page, damaged);
  const refusal = page.getByRole('dialog', { name: 'damaged.unit.json could not be read' });
  await expect(refusal).toContainText('kind.elements[0].plus');
  await refusal.getByRole('button', { name: 'Close' }).click();
  await importFile(page, file);
  await expect(shelf(page).getByRole('button', { name: /^Blue transmitter/ })).toHaveCount(1);

  // Dropped on the window it is the same, and there is one of that name by now.
  const dropped = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], 'blue.unit.json', { type: 'application/json' }));
    return transfer;
  }, text);
  await page.getByRole('main').dispatchEvent('drop', { dataTransfer: dropped });
  const twin = page.getByRole('dialog', { name: 'There is a kind called “Blue transmitter” already' });
  await twin.getByRole('button', { name: 'Replace' }).click();
  await expect(shelf(page).getByRole('button', { name: /^Blue transmitter/ })).toHaveCount(1);
  await shelf(page)
    .getByRole('button', { name: /^Blue transmitter/ })
    .dragTo(page.getByRole('main'), { targetPosition: { x: 80, y: 90 } });
  await expect(port(page, 'Blue transmitter', 'antenna, N jack')).toBeVisible();
});

test('a blank kind can be used once its problems are mended', async ({ page, address }) => {
  await openScreen(page, address);
  await shelf(page).getByRole('button', { name: 'Make a kind' }).click();
  const problems = editor(page).getByRole('list', { name: 'Problems' });
  await expect(problems).toContainText('needs a name');
  await expect(problems).toContainText('needs a port');
  await expect(use(page)).toBeDisabled();
  await problems.getByRole('button', { name: 'Name' }).click();
  await expect(editor(page).getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
  await page.keyboard.type('Lamp');
  await editor(page).getByRole('button', { name: 'Add a port' }).click();
  await editor(page).getByRole('textbox', { name: 'Name on the card' }).fill('feed');
  await expect(editor(page).getByRole('img', { name: 'The card of Lamp: feed' })).toBeVisible();
  await editor(page).getByRole('combobox', { name: 'Add a part' }).selectOption('Takes power');
  await editor(page).getByRole('button', { name: 'Add a part' }).click();
  await expect(problems).toHaveCount(0);

  await editor(page).getByRole('textbox', { name: 'Works up to' }).fill('9');
  await editor(page).getByRole('textbox', { name: 'Works up to' }).press('Enter');
  await expect(problems.getByRole('listitem')).toHaveText([/Takes power, feed.*at least 11/]);
  await expect(use(page)).toBeDisabled();
  await editor(page).getByRole('textbox', { name: 'Works up to' }).fill('14.5 V');
  await editor(page).getByRole('textbox', { name: 'Works up to' }).press('Enter');
  await use(page).click();
  await expect(unit(page, 'Lamp')).toBeVisible();
});

test('a unit with a figure of its own becomes a kind, and a change of that asks before a cable goes', async ({
  page,
  address,
}) => {
  await openScreen(page, address);
  await takeFromShelf(page, /^Fused strip/, 'Fused strip');
  await takeFromShelf(page, /^CW transmitter, 3 W/, 'CW transmitter');
  await layCable(page, ['Fused strip', '4'], ['CW transmitter', 'power']);
  const cable = page.getByRole('img', { name: 'Cable D1' });
  await expect(cable).toHaveCount(1);
  await unit(page, 'Fused strip').click({ position: { x: 30, y: 8 } });
  const details = page.getByRole('complementary', { name: 'Details' });
  const firstFuse = details.getByRole('textbox', { name: 'Fuse' }).first();
  await firstFuse.fill('7.5');
  await firstFuse.press('Enter');
  await details.getByRole('textbox', { name: 'Name' }).fill('My strip');
  await details.getByRole('button', { name: 'Make this a kind' }).click();
  await row(page, /^Fuse, in – 1/).click();
  await expect(editor(page).getByRole('textbox', { name: 'Fuse', exact: true })).toHaveValue('7.5 A');
  await use(page).click();
  await expect(shelf(page).getByRole('button', { name: /^My strip/ })).toBeVisible();
  await expect(firstFuse).toHaveValue('7.5 A');
  await expect(details.getByRole('button', { name: /back to the shelf/ })).toHaveCount(0);
  await expect(cable).toHaveCount(1);

  await shelf(page).getByRole('button', { name: 'Edit My strip' }).click();
  await row(page, /^4power/).click();
  await editor(page).getByRole('button', { name: 'Remove 4' }).click();
  // What was joined to the port has to go as well.
  const problems = editor(page).getByRole('list', { name: 'Problems' });
  while ((await problems.count()) > 0) {
    await problems.getByRole('button').first().click();
    const open = editor(page).locator('details[open]').filter({ hasText: 'no contact' }).first();
    await open.getByRole('button', { name: /^Remove/ }).click();
  }
  await use(page).click();
  const question = page.getByRole('dialog', { name: 'Change the units on the drawing too?' });
  await expect(question).toContainText('D1: the port is gone');
  await question.getByRole('button', { name: 'Change them too' }).click();
  await expect(cable).toHaveCount(0);
  await expect(port(page, 'My strip', '4')).toHaveCount(0);
  await page.keyboard.press('ControlOrMeta+z');
  await expect(cable).toHaveCount(1);
});

test('a kind is made and used by keys alone', async ({ page, address }) => {
  await openScreen(page, address);
  const keys = new Keys(page);
  await keys.tabTo(shelf(page).getByRole('button', { name: 'Make a kind' }));
  await keys.press('Enter');
  await keys.tabTo(editor(page).getByRole('searchbox'));
  await page.keyboard.type('straight key');
  await keys.tabTo(editor(page).getByRole('button', { name: /^Straight key/ }));
  await keys.press('Enter');
  await keys.tabTo(editor(page).getByRole('textbox', { name: 'Name', exact: true }));
  await keys.press('ControlOrMeta+a');
  await page.keyboard.type('Brass key');
  await keys.tabTo(row(page, /^port out/));
  await keys.press('Enter');
  await keys.tabTo(editor(page).getByRole('combobox', { name: 'Connector' }));
  await page.keyboard.type('3.5 mm mono');
  await expect(row(page, /^port out/)).toContainText('3.5 mm mono');
  await keys.press('Escape');
  await expect(page.getByRole('dialog', { name: 'Discard what was entered?' })).toBeVisible();
  await keys.press('Escape');
  await expect(page.getByRole('dialog', { name: 'Discard what was entered?' })).toHaveCount(0);
  await keys.tabTo(use(page));
  await keys.press('Enter');
  await expect(port(page, 'Brass key', '3.5 mm mono')).toBeVisible();
  await keys.tabTo(shelf(page).getByRole('button', { name: /^Brass key/ }));
  await keys.press('Enter');
  await expect(unit(page, 'Brass key 2')).toBeVisible();
});

test('what this browser kept and nobody can read is said and handed over', async ({ page, address }, info) => {
  await page.addInitScript(() => localStorage.setItem('stationwright.kinds', '[{"id": "own-x", "file": {'));
  await openScreen(page, address);
  await expect(shelf(page).getByRole('alert')).toContainText('could not be read');
  const download = page.waitForEvent('download');
  await shelf(page).getByRole('button', { name: 'Save the text' }).click();
  const file = info.outputPath('kept.txt');
  await (await download).saveAs(file);
  expect(await readFile(file, 'utf8')).toBe('[{"id": "own-x", "file": {');
  await expect(shelf(page).getByRole('alert')).toHaveCount(0);
  await takeFromShelf(page, /^Paddle/, 'Paddle');
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious is in the way in the editor, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    await shelf(page).getByRole('button', { name: 'Make a kind' }).click();
    expect(await seriousProblems(page, '.kind-editor'), 'blank').toEqual([]);
    await editor(page).getByRole('searchbox').fill('transceiver 100');
    await editor(page)
      .getByRole('button', { name: /^Transceiver, 100/ })
      .click();
    await editor(page)
      .locator('details')
      .evaluateAll((all) => {
        for (const details of all) if (details instanceof HTMLDetailsElement) details.open = true;
      });
    expect(await seriousProblems(page, '.kind-editor'), 'all open').toEqual([]);
  });
}
