import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { readStation, type Station, writeStation } from '../../core/index.ts';
import { unit } from '../drawing.ts';
import type { Shell } from './launch.ts';
import { answerQuestions, chooseMenu, expect, onEachShell, test, windowTitles } from './test.ts';

const sample = path.join(import.meta.dirname, '../../core/samples/hut.station.json');
const readFile = (file: string): Station => {
  const read = readStation(readFileSync(file, 'utf8'));
  if (!('station' in read)) throw new Error(JSON.stringify(read.problems));
  return read.station;
};
const hut = readFile(sample);
const [paddle = hut.units[0] as Station['units'][number]] = hut.units.filter(({ name }) => name === 'Paddle');

const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title', exact: true });
const dialog = (page: Page, name: string | RegExp) => page.getByRole('dialog', { name });
const comeBack = (page: Page) => page.evaluate(() => window.dispatchEvent(new Event('focus')));

/** What somebody else makes of the file: a unit has another name. */
const theirs: Station = {
  ...hut,
  units: hut.units.map((unit) => (unit === paddle ? { ...unit, name: 'Bug key' } : unit)),
};

onEachShell(() => {
  // Each starts the whole program.
  test.slow();

  /** The hut in a file of the test's own, shown by the app. */
  async function showHut(folder: string, startApp: (...args: string[]) => Promise<Shell>) {
    const file = path.join(folder, 'hut.station.json');
    writeFileSync(file, writeStation(hut));
    const shell = await startApp(file);
    await expect(heading(shell.page)).toHaveText(hut.title);
    return { file, shell, page: shell.page };
  }

  test('what is being typed is saved, and asked about on closing', async ({ startApp, folder }) => {
    const { file, shell, page } = await showHut(folder, startApp);
    await titleField(page).fill('Typed and not left');
    await expect.poll(() => windowTitles(shell)).toEqual([expect.stringMatching(/^(• )?hut/)]);
    await chooseMenu(shell, 'save');
    await expect.poll(() => readFile(file).title).toBe('Typed and not left');
    await expect(titleField(page)).toBeFocused();
    await titleField(page).fill('Typed before closing');
    await expect.poll(() => windowTitles(shell)).not.toEqual(['hut.station.json - Stationwright']);
    await answerQuestions(shell, 'Save');
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
    expect(readFile(file).title).toBe('Typed before closing');
  });

  test('what is being typed is taken before another stage is shown', async ({ startApp, folder }) => {
    const { shell, page } = await showHut(folder, startApp);
    await titleField(page).fill('Typed before the budget');
    await chooseMenu(shell, 'stage-budget');
    await expect(heading(page)).toHaveText('Typed before the budget');
  });

  test('a file changed by somebody else: what differs is told, loaded, and undone', async ({ startApp, folder }) => {
    const { file, shell, page } = await showHut(folder, startApp);
    // Touched, or written in another way: the same document, and no question.
    writeFileSync(file, JSON.stringify(JSON.parse(writeStation(hut))));
    await comeBack(page);
    writeFileSync(file, writeStation(theirs));
    await comeBack(page);
    const asked = dialog(page, 'hut.station.json was changed by somebody else');
    await expect(asked.getByRole('listitem')).toHaveText(['Paddle: name Paddle → Bug key']);
    await asked.getByRole('button', { name: 'Load what is in the file' }).click();
    await expect(unit(page, 'Bug key')).toBeVisible();
    await expect.poll(() => windowTitles(shell)).toEqual(['hut.station.json - Stationwright']);
    await page.getByRole('main').click({ position: { x: 5, y: 5 } });
    await chooseMenu(shell, 'undo');
    await expect(unit(page, 'Bug key')).toHaveCount(0);
    await chooseMenu(shell, 'save');
    await expect.poll(() => readFile(file)).toEqual(hut);
  });

  test('a file changed by somebody else is not saved over without a question', async ({ startApp, folder }) => {
    const { file, shell, page } = await showHut(folder, startApp);
    await titleField(page).fill('Mine');
    writeFileSync(file, writeStation(theirs));
    await chooseMenu(shell, 'save');
    const asked = dialog(page, 'hut.station.json was changed by somebody else');
    await expect(asked.getByRole('listitem')).toContainText(['Paddle: name Paddle → Bug key', 'Mine']);
    await asked.getByRole('button', { name: 'Cancel' }).click();
    expect(readFile(file)).toEqual(theirs);
    await chooseMenu(shell, 'save');
    await asked.getByRole('button', { name: 'Keep mine, save over it' }).click();
    await expect.poll(() => readFile(file)).toEqual({ ...hut, title: 'Mine' });
    await expect.poll(() => windowTitles(shell)).toEqual(['hut.station.json - Stationwright']);
  });

  test('a file that is gone is saved there again; a folder that is gone is told', async ({ startApp, folder }) => {
    const { file, shell, page } = await showHut(folder, startApp);
    rmSync(file);
    await comeBack(page);
    const gone = dialog(page, 'hut.station.json is gone');
    await gone.getByRole('button', { name: 'Not now' }).click();
    // Only on the screen now, so it is asked about on closing.
    await expect.poll(() => windowTitles(shell)).not.toEqual(['hut.station.json - Stationwright']);
    await chooseMenu(shell, 'save');
    await expect.poll(() => existsSync(file) && readFile(file)).toEqual(hut);
    rmSync(folder, { recursive: true });
    await titleField(page).fill('Still here');
    await chooseMenu(shell, 'save');
    await expect(dialog(page, 'Not saved')).toContainText(`the folder ${folder} is not there any more`);
    await page.keyboard.press('Escape');
    await expect(page.getByText('not saved yet')).toBeVisible();
  });

  test('saving twice at once asks once where to, and the name fits however long', async ({ startApp, folder }) => {
    const shell = await startApp();
    const { page } = shell;
    await titleField(page).fill('An attic '.repeat(20));
    const file = path.join(folder, `${'無'.repeat(80)}.station.json`);
    await shell.evaluate(({ dialog: shown }, filePath) => {
      const kept = globalThis as unknown as { asked: number };
      kept.asked = 0;
      shown.showSaveDialog = async () => {
        kept.asked += 1;
        await new Promise((resolve) => setTimeout(resolve, 200));
        return { canceled: false, filePath };
      };
    }, file);
    await chooseMenu(shell, 'save');
    await chooseMenu(shell, 'save');
    await expect.poll(() => windowTitles(shell)).toEqual([`${path.basename(file)} - Stationwright`]);
    expect(readFile(file).title).toContain('An attic An attic');
    expect(statSync(file).size).toBeGreaterThan(0);
    expect(await shell.evaluate(() => (globalThis as unknown as { asked: number }).asked, null)).toBe(1);
  });
});
