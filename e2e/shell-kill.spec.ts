import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type { Shell } from './shell/launch.ts';
import { chooseMenu, expect, onEachShell, test } from './shell/test.ts';

/*
 * The program is killed while somebody edits and saves, again and again. Whatever the moment: the file and what was kept
 * are whole, and between them hold every edit that had reached the disk. How old the first missing edit was is printed,
 * not tested: it depends on what else the machine does. KILL_ROUNDS=200 for many.
 */
const rounds = Number(process.env['KILL_ROUNDS'] ?? 3);
const sample = path.join(import.meta.dirname, '../core/samples/hut.station.json');

/** Edits have numbers, which are in the title. */
const numberIn = (title: string): number => Number(/^Edit (\d+)$/.exec(title)?.[1] ?? 0);
const titleOf = (text: string): string => JSON.parse(text).title;

async function edit(page: Page, n: number): Promise<void> {
  await page.getByRole('textbox', { name: 'Title', exact: true }).fill(`Edit ${n}`);
  await page.keyboard.press('Tab');
}

/** The edit that is in the file, and those that are kept beside it. Throws where one of them is not whole. */
function onDisk(file: string, kept: string): { inFile: number; beside: number[] } {
  const names = existsSync(kept) ? readdirSync(kept).filter((name) => name.endsWith('.kept')) : [];
  const texts = names.map((name) => {
    const content = readFileSync(path.join(kept, name), 'utf8');
    return content.slice(content.indexOf('\n') + 1);
  });
  const numberOf = (text: string) => numberIn(titleOf(text));
  return { inFile: numberOf(readFileSync(file, 'utf8')), beside: texts.map(numberOf) };
}

function newestOnDisk(file: string, kept: string): number {
  const { inFile, beside } = onDisk(file, kept);
  return Math.max(inFile, ...beside);
}

/** Brings back what is offered where it is newer than the file: then the newest edit is shown. */
async function goOn(shell: Shell, file: string, kept: string): Promise<void> {
  const { inFile, beside } = onDisk(file, kept);
  const newest = Math.max(inFile, ...beside);
  // What is the same as the file is not offered.
  if (beside.some((n) => n !== inFile)) {
    const offer = shell.page.getByRole('dialog', { name: 'Bring back unsaved work?' });
    const answer = newest > inFile ? `Bring back Edit ${newest}` : 'Decide later';
    await offer.getByRole('button', { name: answer, exact: true }).click();
    await expect(offer).toBeHidden();
  }
  const heading = shell.page.getByRole('heading', { level: 1 });
  await expect(heading).toHaveText(newest === 0 ? titleOf(readFileSync(file, 'utf8')) : `Edit ${newest}`);
}

onEachShell(() => {
  test(`killed ${rounds} times while editing and saving, it loses nothing that had reached the disk`, async ({
    startApp,
    folder,
  }) => {
    test.setTimeout(60_000 + rounds * 60_000);
    const file = path.join(folder, 'hut.station.json');
    writeFileSync(file, readFileSync(sample));
    let n = 0;
    const ages: number[] = [];
    for (let round = 0; round < rounds; round++) {
      const shell = await startApp(file);
      const kept = path.join(await shell.evaluate(({ app }) => app.getPath('userData'), null), 'unsaved');
      await goOn(shell, file, kept);
      const typed: { n: number; at: number }[] = [];
      // Other moments in every round, and the same in every run.
      const edits = 4 + ((round * 7) % 17);
      for (let i = 0; i < edits; i++) {
        n += 1;
        await edit(shell.page, n);
        typed.push({ n, at: Date.now() });
        if ((i + round) % 6 === 5) await chooseMenu(shell, 'save');
      }
      await shell.page.waitForTimeout((round * 137) % 700);
      const before = newestOnDisk(file, kept);
      const killedAt = Date.now();
      await shell.kill();
      const left = newestOnDisk(file, kept);
      expect(left).toBeGreaterThanOrEqual(before);
      const missing = typed.find((one) => one.n > left);
      ages.push(missing ? killedAt - missing.at : 0);
      if (rounds > 10) console.log(`kill ${round + 1}: ${edits} edits, the oldest missing one ${ages.at(-1)} ms old`);
    }
    ages.sort((a, b) => a - b);
    const missed = ages.filter((age) => age > 0).length;
    console.log(
      `${rounds} kills: ${missed} with edits missing; the oldest missing edit, ms: median ${at(ages, 0.5)}, 95 % ${at(ages, 0.95)}, most ${at(ages, 1)}; over 1 s: ${ages.filter((age) => age > 1000).length}`,
    );
  });
});

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
