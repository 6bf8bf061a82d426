import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type { Shell } from './shell/launch.ts';
import { answerQuestion, answerSave, chooseMenu, expect, onEachShell, test, windowTitles } from './shell/test.ts';

const sample = path.join(import.meta.dirname, '../core/samples/hut.station.json');
const titleIn = (file: string): string => JSON.parse(readFileSync(file, 'utf8')).title;
const mark = process.platform === 'darwin' ? '' : '• ';

const offer = (page: Page) => page.getByRole('dialog', { name: 'Bring back unsaved work?' });
const rows = (page: Page) => offer(page).getByRole('listitem');
const heading = (page: Page) => page.getByRole('heading', { level: 1 });

async function retitle(page: Page, title: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Title', exact: true }).fill(title);
  await page.keyboard.press('Tab');
}

const keptFolder = async (shell: Shell) =>
  path.join(await shell.evaluate(({ app }) => app.getPath('userData'), null), 'unsaved');

/** The titles of what is kept, as its files say. */
function keptTitles(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.kept'))
    .map((name) => JSON.parse(readFileSync(path.join(folder, name), 'utf8').split('\n')[0] ?? '').title)
    .sort();
}

/** The window that was opened for something, when it shows it. */
async function windowWith(shell: Shell, title: string): Promise<Page> {
  let found: Page | undefined;
  await expect
    .poll(async () => {
      for (const page of shell.pages()) {
        // A page that has died does not answer.
        const shown = await heading(page)
          .textContent({ timeout: 2000 })
          .catch(() => null);
        if (shown === title) found = page;
      }
      return found !== undefined;
    })
    .toBe(true);
  return found as Page;
}

onEachShell(() => {
  // Each starts the program two or three times.
  test.slow();

  test('after a kill, unsaved work is offered with its file, and saved there', async ({ startApp, folder }) => {
    const file = path.join(folder, 'hut.station.json');
    writeFileSync(file, readFileSync(sample));
    const killed = await startApp(file);
    await expect(heading(killed.page)).toHaveText(titleIn(sample));
    await retitle(killed.page, 'Attic');
    const kept = await keptFolder(killed);
    await expect.poll(() => keptTitles(kept)).toEqual(['Attic']);
    await killed.kill();
    expect(titleIn(file)).toBe(titleIn(sample));

    const shell = await startApp();
    await expect(rows(shell.page)).toContainText(
      /Attic.*today at \d\d:\d\d, \d+ units, \d+ cables.*hut\.station\.json/,
    );
    await expect(offer(shell.page).getByRole('button', { name: 'Bring back Attic' })).toBeFocused();
    await shell.page.keyboard.press('Enter');
    await expect(heading(shell.page)).toHaveText('Attic');
    await expect.poll(() => windowTitles(shell)).toEqual([`${mark}hut.station.json - Stationwright`]);
    await chooseMenu(shell, 'save');
    await expect.poll(() => titleIn(file)).toBe('Attic');
    await expect.poll(() => keptTitles(kept)).toEqual([]);
  });

  test('several windows come back at once, each as it was; what is put off is offered next time', async ({
    startApp,
  }) => {
    const killed = await startApp();
    const kept = await keptFolder(killed);
    await retitle(killed.page, 'One');
    await chooseMenu(killed, 'new');
    await expect.poll(() => killed.pages().length).toBe(2);
    const second = killed.pages()[1] as Page;
    // What a living window has is nobody else's business.
    await expect(second.getByRole('heading', { name: 'Draw your station' })).toBeVisible();
    await expect(offer(second)).toBeHidden();
    await retitle(second, 'Two');
    await expect.poll(() => keptTitles(kept)).toEqual(['One', 'Two']);
    await killed.kill();

    const again = await startApp();
    await expect(rows(again.page)).toHaveText([/^Two/, /^One/]);
    await again.page.keyboard.press('Escape');
    await again.kill();

    const shell = await startApp();
    await offer(shell.page).getByRole('button', { name: 'Bring all back' }).click();
    await windowWith(shell, 'Two');
    const other = await windowWith(shell, 'One');
    await retitle(other, 'Uno');
    await expect.poll(() => keptTitles(kept)).toEqual(['Two', 'Uno']);
    expect(shell.pages().length).toBe(2);
  });

  test('closing without saving forgets it, and so do saving and throwing away', async ({ startApp, folder }) => {
    const first = await startApp();
    const kept = await keptFolder(first);
    await retitle(first.page, 'Attic');
    await expect.poll(() => keptTitles(kept)).toEqual(['Attic']);
    await answerQuestion(first, "Don't save");
    await chooseMenu(first, 'quit');
    expect(await first.ended).toBe(0);
    expect(keptTitles(kept)).toEqual([]);

    const second = await startApp();
    await retitle(second.page, 'Cellar');
    await expect.poll(() => keptTitles(kept)).toEqual(['Cellar']);
    await answerQuestion(second, 'Save');
    await answerSave(second, path.join(folder, 'cellar.station.json'));
    await chooseMenu(second, 'quit');
    expect(await second.ended).toBe(0);
    expect(titleIn(path.join(folder, 'cellar.station.json'))).toBe('Cellar');
    expect(keptTitles(kept)).toEqual([]);

    const killed = await startApp();
    await retitle(killed.page, 'Loft');
    await expect.poll(() => keptTitles(kept)).toEqual(['Loft']);
    await killed.kill();
    const last = await startApp();
    await offer(last.page).getByRole('button', { name: 'Throw away Loft' }).click();
    await offer(last.page).getByRole('button', { name: 'Throw away', exact: true }).click();
    await expect(offer(last.page)).toBeHidden();
    expect(keptTitles(kept)).toEqual([]);
  });

  test('a page that died shows its work again without a question, with its file', async ({
    startApp,
    folder,
    kind,
  }) => {
    const file = path.join(folder, 'hut.station.json');
    writeFileSync(file, readFileSync(sample));
    const shell = await startApp(file);
    await expect(heading(shell.page)).toHaveText(titleIn(sample));
    await retitle(shell.page, 'Attic');
    const kept = await keptFolder(shell);
    await expect.poll(() => keptTitles(kept)).toEqual(['Attic']);
    await answerQuestion(shell, 'Load again');
    const before = shell.pages().length;
    await shell.evaluate(
      ({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer(),
      null,
    );
    if (kind === 'the stand-in') {
      await expect.poll(() => shell.pages().filter((page) => page !== shell.page).length).toBe(before);
      const page = await windowWith(shell, 'Attic');
      await expect(offer(page)).toBeHidden();
      await retitle(page, 'Loft');
      await expect.poll(() => keptTitles(kept)).toEqual(['Loft']);
    }
    await expect.poll(() => windowTitles(shell)).toEqual([`${mark}hut.station.json - Stationwright`]);
    await chooseMenu(shell, 'save');
    await expect.poll(() => titleIn(file)).toBe(kind === 'the stand-in' ? 'Loft' : 'Attic');
  });

  test('damaged, or refused by the reader, it is listed as such and can be saved as it is', async ({
    startApp,
    folder,
  }) => {
    const killed = await startApp();
    const kept = await keptFolder(killed);
    await retitle(killed.page, 'Attic');
    await expect.poll(() => keptTitles(kept)).toEqual(['Attic']);
    await killed.kill();
    const [name = ''] = readdirSync(kept);
    const whole = readFileSync(path.join(kept, name), 'utf8');
    writeFileSync(path.join(kept, name), whole.slice(0, -40));
    const damaged = whole.slice(20);
    writeFileSync(path.join(kept, '00000000-0000-4000-8000-000000000000.kept'), damaged);

    const shell = await startApp();
    await expect(rows(shell.page)).toHaveCount(2);
    await expect(rows(shell.page).getByText('It can’t be shown')).toHaveCount(2);
    const file = path.join(folder, 'rescued.station.json');
    await answerSave(shell, file);
    await offer(shell.page).getByRole('button', { name: 'Save as a file Unsaved work' }).click();
    await expect.poll(() => existsSync(file) && readFileSync(file, 'utf8')).toBe(damaged);
    await offer(shell.page).getByRole('button', { name: 'Save as a file Attic' }).click();
    await expect.poll(() => readFileSync(file, 'utf8')).toBe(whole.slice(whole.indexOf('\n') + 1, -40));
    expect(readdirSync(kept).length).toBe(2);
  });
});
