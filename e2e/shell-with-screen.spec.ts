import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Shell } from './shell/launch.ts';
import {
  answerOpen,
  answerQuestion,
  answerSave,
  chooseMenu,
  expect,
  onEachShell,
  test,
  windowTitles,
} from './shell/test.ts';

const sample = path.join(import.meta.dirname, '../core/samples/hut.station.json');
const sampleTitle: string = JSON.parse(readFileSync(sample, 'utf8')).title;
const titleIn = (file: string): string => JSON.parse(readFileSync(file, 'utf8')).title;

const heading = ({ page }: Shell) => page.getByRole('heading', { level: 1 });

async function retitle({ page }: Shell, title: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Title', exact: true }).fill(title);
  await page.keyboard.press('Tab');
}

onEachShell(() => {
  test('a file is opened by menu, changed, and saved in its place', async ({ startApp, folder }) => {
    const shell = await startApp();
    const file = path.join(folder, 'hut.station.json');
    writeFileSync(file, readFileSync(sample));
    await answerOpen(shell, file);
    await chooseMenu(shell, 'open');
    await expect(heading(shell)).toHaveText(sampleTitle);
    await expect.poll(() => windowTitles(shell)).toEqual(['hut.station.json - Stationwright']);
    await retitle(shell, 'Attic');
    await expect.poll(() => windowTitles(shell)).toEqual([expect.stringMatching(/^(• )?hut/)]);
    await chooseMenu(shell, 'save');
    await expect.poll(() => titleIn(file)).toBe('Attic');
    await expect.poll(() => windowTitles(shell)).toEqual(['hut.station.json - Stationwright']);
  });

  test('a new station is asked for its place on the first save, and can go elsewhere', async ({ startApp, folder }) => {
    const shell = await startApp();
    await retitle(shell, 'Cellar');
    const [first = '', second = ''] = ['first', 'second'].map((name) => path.join(folder, `${name}.station.json`));
    await answerSave(shell, first);
    await shell.page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => existsSync(first) && titleIn(first)).toBe('Cellar');
    await answerSave(shell, second);
    await chooseMenu(shell, 'save-as');
    await expect.poll(() => existsSync(second) && titleIn(second)).toBe('Cellar');
    await expect.poll(() => windowTitles(shell)).toEqual(['second.station.json - Stationwright']);
  });

  test('a file that is no station says so, whether chosen or named at the start', async ({ startApp, folder }) => {
    const shell = await startApp(path.join(folder, 'gone.station.json'));
    const said = shell.page.getByRole('dialog');
    await expect(said).toContainText('gone.station.json could not be opened: it is not there any more.');
    await shell.page.keyboard.press('Escape');
    await expect(said).toBeHidden();
    const broken = path.join(folder, 'broken.station.json');
    writeFileSync(broken, '{ "format": ');
    await answerOpen(shell, broken);
    await chooseMenu(shell, 'open');
    await expect(said).toContainText('broken.station.json');
  });

  test('closing with changes saves them if the user wants it', async ({ startApp, folder }) => {
    const file = path.join(folder, 'last.station.json');
    writeFileSync(file, readFileSync(sample));
    const shell = await startApp(file);
    await expect(heading(shell)).toHaveText(sampleTitle);
    await retitle(shell, 'Last change');
    await expect.poll(() => windowTitles(shell)).not.toEqual(['last.station.json - Stationwright']);
    await answerQuestion(shell, 'Save');
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
    expect(titleIn(file)).toBe('Last change');
  });

  test('the menu shows samples and stages, undoes, and makes a PDF', async ({ startApp, folder }) => {
    const shell = await startApp();
    await chooseMenu(shell, 'sample:hut');
    await expect(heading(shell)).toHaveText(sampleTitle);
    await retitle(shell, 'Changed');
    await expect(heading(shell)).toHaveText('Changed');
    await shell.page.getByRole('main').click({ position: { x: 5, y: 5 } });
    await chooseMenu(shell, 'undo');
    await expect(heading(shell)).toHaveText(sampleTitle);
    await chooseMenu(shell, 'stage-budget');
    await expect(shell.page.getByRole('navigation').locator('[aria-current]')).toContainText('Budget');
    const pdf = path.join(folder, 'budget.pdf');
    await answerSave(shell, pdf);
    await chooseMenu(shell, 'save-pdf');
    await expect.poll(() => existsSync(pdf) && readFileSync(pdf, 'latin1').slice(0, 5)).toBe('%PDF-');
  });
});
