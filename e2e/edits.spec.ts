import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Page, TestInfo } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFile, openScreen, unit } from './drawing.ts';
import { RandomEdits } from './random-edits.ts';

const editCount = 100;
/** The same edits in every run; `EDIT_SEED=NUMBER npm run test:e2e` makes others. */
const seed = Number(process.env['EDIT_SEED'] ?? 1);
const sample = path.join(import.meta.dirname, '../core/samples/hut.station.json');

test('a hundred random edits are undone to the very file that was there, and done again', async ({
  page,
  address,
}, info) => {
  // A hundred edits and two hundred steps: on a machine that is five times slower longer than any other journey.
  test.slow();
  await openScreen(page, address);
  await openFile(page, sample);
  await expect(unit(page, 'Transmitter')).toBeVisible();
  const before = await save(page, info, 'before');
  expect(before).toBe(await readFile(sample, 'utf8'));

  const edits = new RandomEdits(page, seed);
  const made: string[] = [];
  const told = () => `EDIT_SEED=${seed} ${made.map((edit, i) => `\n${i + 1}. ${edit}`).join('')}`;
  try {
    for (let i = 0; i < editCount; i++) made.push(await edits.make(i));
  } catch (error) {
    throw new Error(told(), { cause: error });
  }
  const after = await save(page, info, 'after');
  expect(after === before, told()).toBe(false);

  const steps = await stepNames(page);
  expect(steps.length, `${told()}\nThe steps:\n${steps.join('\n')}`).toBe(editCount);
  expect(await clickToTheEnd(page, 'Undo'), told()).toBe(editCount);
  expect((await save(page, info, 'undone')) === before, told()).toBe(true);
  expect(await clickToTheEnd(page, 'Redo'), told()).toBe(editCount);
  expect((await save(page, info, 'redone')) === after, told()).toBe(true);
});

/** What the list of steps calls those that were done, in order. */
async function stepNames(page: Page): Promise<string[]> {
  const open = page.getByRole('button', { name: 'Steps', exact: true });
  await open.click();
  const rows = page.getByRole('dialog', { name: 'Steps' }).getByRole('button');
  await expect(rows.first()).toBeVisible();
  const [, ...names] = await rows.allTextContents();
  await open.click();
  return names;
}

/**
 * Clicks the button until there is nothing left to do, and says how often that was. From within the page, a click in
 * each frame: each step is drawn before the next is taken.
 */
const clickToTheEnd = (page: Page, name: 'Undo' | 'Redo'): Promise<number> =>
  page.getByRole('button', { name, exact: true }).evaluate(async (button, most) => {
    let clicks = 0;
    for (; button.matches(':enabled') && clicks < most; clicks++) {
      (button as HTMLButtonElement).click();
      await new Promise(requestAnimationFrame);
    }
    return clicks;
  }, 2 * editCount);

async function save(page: Page, info: TestInfo, name: string): Promise<string> {
  const file = info.outputPath(`${name}.station.json`);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await (await download).saveAs(file);
  return readFile(file, 'utf8');
}
