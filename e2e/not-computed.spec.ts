import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen, stage, unit } from './drawing.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';
import { setThreads, troubleThreads } from './troubled-threads.ts';

// Each looks at every stage and sheet that there is.
test.slow();

const stages = ['Draw', 'Check', 'Cables', 'Budget', 'Power-up'] as const;
const since = 'Not computed since “Change plan”.';
const sheet = (page: Page, name: string) => page.getByRole('complementary', { name, exact: true });
const strip = (page: Page) => page.getByRole('region', { name: 'Key-down' });
const openFindings = (page: Page) => page.getByRole('button', { name: /go to Check$/ });

/** What nothing may say of a station that was not computed. */
const allIsWell =
  /Nothing is wrong as far|(?<!was |\d)0 (danger|fault)|No supply is drawn|Nothing gives power|no key or other control/;

// biome-ignore lint/performance/useDomNodeTextContent: what is seen; in the text a hidden date runs into the count after it
const expectNoAllIsWell = async (page: Page) => expect(await page.locator('body').innerText()).not.toMatch(allIsWell);

/** An edit that every figure follows. */
async function changeSpeed(page: Page, wpm: string) {
  await stage(page, 'Draw').click();
  await page.keyboard.press('Escape');
  const speed = page.getByRole('textbox', { name: 'Speed, WPM' });
  await speed.fill(wpm);
  await speed.press('Enter');
}

async function openComputed(page: Page, address: string, theme: 'light' | 'dark' = 'light') {
  await troubleThreads(page);
  await openScreen(page, address, theme);
  await openFirstDraft(page);
  await expect(openFindings(page)).toHaveAccessibleName(/^Open: /);
}

/** Every stage has been looked at, and then an edit can't be computed. */
async function openThenFail(page: Page, address: string, theme: 'light' | 'dark' = 'light') {
  await openComputed(page, address, theme);
  await stage(page, 'Power-up').click();
  await expect(
    sheet(page, 'Power-up')
      .getByText(/^Expect/)
      .first(),
  ).toBeVisible();
  await setThreads(page, 'throw');
  await changeSpeed(page, '20');
  await expect(page.getByRole('alert')).toContainText(since);
}

async function taken(page: Page, press: () => Promise<void>, file: string): Promise<string> {
  const download = page.waitForEvent('download');
  await press();
  await (await download).saveAs(file);
  return readFile(file, 'utf8');
}

/** What stands on paper in a part of the book, by its heading. */
async function keepPrinted(page: Page) {
  await page.evaluate(() => {
    window.print = () => {
      const parts = [...document.querySelectorAll('.book-part')].map((p) => [
        p.querySelector('h2')?.textContent,
        p.textContent,
      ]);
      document.body.dataset['printed'] = JSON.stringify(Object.fromEntries(parts));
    };
  });
}

const printed = async (page: Page): Promise<Record<string, string>> => {
  await expect.poll(() => page.locator('body').getAttribute('data-printed')).toBeTruthy();
  return JSON.parse((await page.locator('body').getAttribute('data-printed')) ?? '{}');
};

const isOnPaper = async (page: Page, words: Locator) => {
  await page.emulateMedia({ media: 'print' });
  await expect(words).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
};

test('after a survey that failed every stage says since when, and marks what is from before', async ({
  page,
  address,
}) => {
  await openThenFail(page, address);
  await expect(openFindings(page)).toHaveAccessibleName(
    /^Findings not computed since “Change plan”; open before: 3 dangers/,
  );
  for (const name of stages) {
    await stage(page, name).click();
    await expect(page.getByRole('alert').filter({ hasText: since })).toBeVisible();
    await expect(stage(page, 'Check')).toContainText('not computed since “Change plan”');
    await expectNoAllIsWell(page);
  }
  await expect(unit(page, 'Bench supply').getByText('old: ')).toHaveCount(1);

  await stage(page, 'Check').click();
  await expect(sheet(page, 'Findings')).toContainText(`${since} What follows is old`);
  await expect(sheet(page, 'Findings').getByRole('img', { name: 'old: danger' }).first()).toBeVisible();
  await expect(sheet(page, 'Findings').getByRole('button', { name: 'was 3 danger' })).toBeVisible();
  await expect(strip(page)).toContainText(since);
  await page.getByRole('button', { name: 'Plus and minus are swapped' }).click();
  await expect(page.getByRole('button', { name: 'Do it' })).toBeDisabled();
  await expect(sheet(page, 'Findings')).toContainText('once it is computed');

  for (const name of ['Budget', 'Power-up'] as const) {
    await stage(page, name).click();
    await expect(sheet(page, name)).toContainText(`${since} What follows is old`);
    await isOnPaper(page, sheet(page, name).getByText(since));
  }
  await stage(page, 'Draw').click();
  await unit(page, 'Transmitter').click();
  await expect(sheet(page, 'Details')).toContainText(since);

  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: /^Find/ }).fill('swapped');
  await expect(page.getByRole('dialog', { name: 'Find' }).getByRole('option').first()).toContainText('old finding');
});

test('what leaves the app says that it is old: book, table and chart', async ({ page, address }, info) => {
  await openThenFail(page, address);
  await stage(page, 'Budget').click();
  const csv = await taken(
    page,
    () => page.getByRole('button', { name: 'Save loads as CSV' }).click(),
    info.outputPath('loads.csv'),
  );
  const lines = csv.trim().split('\r\n').slice(1);
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^"?Old, from \d\d:\d\d: not computed since “Change plan”/);
  const svg = await taken(
    page,
    () => page.getByRole('button', { name: 'Save chart “Who draws what” as SVG' }).click(),
    info.outputPath('chart.svg'),
  );
  expect(svg).toMatch(/<text [^>]*>Old, from \d\d:\d\d: not computed since “Change plan”<\/text>/);

  await keepPrinted(page);
  await page.keyboard.press('Control+b');
  const dialog = page.getByRole('dialog', { name: 'Station book' });
  await expect(dialog).toContainText(since);
  await dialog.getByRole('button', { name: 'Print' }).click();
  const book = await printed(page);
  expect(book['Findings']).toContain(`${since} What follows is old`);
  expect(book['Current budget']).toContain(`${since} What follows is old`);
  // The sheet is worked out for the book: there is none from before.
  expect(book['Power-up']).toContain('Not computed.');
  for (const part of Object.values(book)) expect(part).not.toMatch(allIsWell);
});

test('a station that never could be computed says so, and nothing is shown as none', async ({ page, address }) => {
  await troubleThreads(page, 'throw');
  await openScreen(page, address);
  await openFirstDraft(page);
  await expect(page.getByRole('alert')).toContainText('This station could not be computed.');
  await expect(openFindings(page)).toHaveAccessibleName(/^Findings not computed/);
  for (const name of stages) {
    await stage(page, name).click();
    await expect(stage(page, 'Check')).toContainText('not computed');
    if (name === 'Power-up') await expect(sheet(page, name)).toContainText('Not computed.');
    await expectNoAllIsWell(page);
  }
  for (const [name, label] of [
    ['Check', 'Findings'],
    ['Budget', 'Budget'],
  ] as const) {
    await stage(page, name).click();
    await expect(sheet(page, label)).toContainText('Not computed. Nothing is known here');
  }
  await keepPrinted(page);
  await page.keyboard.press('Control+b');
  await page.getByRole('dialog', { name: 'Station book' }).getByRole('button', { name: 'Print' }).click();
  const book = await printed(page);
  for (const part of ['Findings', 'Current budget', 'Power-up']) expect(book[part]).toContain('Not computed.');
  for (const part of Object.values(book)) expect(part).not.toMatch(allIsWell);
});

test('undo after a failure brings a good survey back, and takes the marks away', async ({ page, address }) => {
  await openThenFail(page, address);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(since)).toHaveCount(0);
  await expect(openFindings(page)).toHaveAccessibleName(/^Open: 3 dangers/);
  await expect(unit(page, 'Bench supply').getByText('old: ')).toHaveCount(0);
});

test('a survey that hangs says so after a moment, and holds up neither undo nor the next edit', async ({
  page,
  address,
}) => {
  await openComputed(page, address);
  await setThreads(page, 'hang');
  await changeSpeed(page, '20');
  await expect(page.getByText('Still computing since “Change plan”.').first()).toBeVisible();
  await stage(page, 'Check').click();
  await expect(sheet(page, 'Findings')).toContainText('Still computing since “Change plan”. What follows is old');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Still computing')).toHaveCount(0);
  await expect(openFindings(page)).toHaveAccessibleName(/^Open: 3 dangers/);
  await setThreads(page, 'good');
  await changeSpeed(page, '25');
  await expect(page.getByText('Still computing')).toHaveCount(0);
  await expect(openFindings(page)).toHaveAccessibleName(/^Open: 3 dangers/);
});

test('a survey that never ends is ended after its limit, and says so', async ({ page, address }) => {
  await page.clock.install();
  await openComputed(page, address);
  await setThreads(page, 'hang');
  await changeSpeed(page, '20');
  await page.clock.runFor('05:00');
  await expect(page.getByRole('alert')).toContainText(since);
  await expect(page.getByRole('alert')).toContainText(/It took longer than \d+ s and was stopped\./);
});

test('before the first survey it is being computed, not zero', async ({ page, address }) => {
  await troubleThreads(page, 'hang');
  await openScreen(page, address);
  await openFirstDraft(page);
  await expect(stage(page, 'Check')).toContainText('computing');
  for (const [name, label] of [
    ['Check', 'Findings'],
    ['Budget', 'Budget'],
    ['Power-up', 'Power-up'],
  ] as const) {
    await stage(page, name).click();
    await expect(sheet(page, label)).toContainText('Computing…');
    await expectNoAllIsWell(page);
  }
});

test('a book waits for the survey, and need not', async ({ page, address }) => {
  await openComputed(page, address);
  await setThreads(page, 'hang');
  await changeSpeed(page, '20');
  await keepPrinted(page);
  await page.keyboard.press('Control+b');
  const dialog = page.getByRole('dialog', { name: 'Station book' });
  await dialog.getByRole('button', { name: 'Print' }).click();
  await expect(dialog.getByRole('status')).toContainText('goes on paper once it is there');
  expect(await page.locator('body').getAttribute('data-printed')).toBeNull();
  await dialog.getByRole('button', { name: 'Don’t wait: print what there is' }).click();
  const book = await printed(page);
  expect(book['Findings']).toContain('Still computing since “Change plan”. What follows is old');
});

test('the report on a fault has the stack and the station, and no path', async ({ page, address }, info) => {
  await openThenFail(page, address);
  const save = () => page.getByRole('alert').getByRole('button', { name: 'Save a report…' }).click();
  const text = await taken(page, save, info.outputPath('report.txt'));
  expect(text).toContain('While surveying the station, on Mozilla/');
  expect(text).toMatch(/TypeError: .*\n\s+at .*survey\.worker/);
  expect(text).toContain('"speedWpm": 20');
  expect(text).not.toContain('127.0.0.1');
});

test('a screen that can’t be drawn leaves the document to be saved, and comes back', async ({
  page,
  address,
}, info) => {
  await openComputed(page, address);
  await setThreads(page, 'nonsense');
  await changeSpeed(page, '20');
  await expect(page.getByRole('heading', { name: 'The screen met a fault of the program' })).toBeVisible();
  await expect(page.getByRole('main')).toContainText('Your drawing is kept: “Hut, 30 m, first draft”, 13 units');
  const { plan } = await saved(page, info.outputPath('kept.station.json'));
  expect(plan.speedWpm).toBe(20);
  const save = () => page.getByRole('button', { name: 'Save a report…' }).click();
  expect(await taken(page, save, info.outputPath('report.txt'))).toMatch(
    /While drawing the screen, on [\s\S]*TypeError/,
  );
  await page.getByRole('button', { name: 'Undo “Change plan” and show it' }).click();
  await expect(openFindings(page)).toHaveAccessibleName(/^Open: 3 dangers/);
  await expect(unit(page, 'Transmitter')).toBeVisible();
});

test('an error that nobody caught is told in a sentence, with a report to save', async ({ page, address }, info) => {
  await openComputed(page, address);
  await page.evaluate(() => {
    setTimeout(() => {
      throw new RangeError('too far');
    });
  });
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('A fault of the program. What you last did may not have been done: too far.');
  const save = () => alert.getByRole('button', { name: 'Save a report…' }).click();
  expect(await taken(page, save, info.outputPath('report.txt'))).toContain('RangeError: too far');
  await alert.getByRole('button', { name: 'Close' }).click();
  await expect(alert).toHaveCount(0);
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way of what is old, ${theme}`, async ({ page, address }) => {
    await openThenFail(page, address, theme);
    for (const name of ['Check', 'Budget'] as const) {
      await stage(page, name).click();
      expect(await seriousProblems(page)).toEqual([]);
    }
  });
}
