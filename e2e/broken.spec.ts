import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from './browser.ts';
import { openFile, openFirstDraft, openScreen, unit } from './drawing.ts';

const hut = path.join(import.meta.dirname, '../core/samples/hut.station.json');

const broken: readonly { name: string; file: (good: string) => string; places: readonly string[] }[] = [
  { name: 'not JSON', file: (good) => good.replace('"plan": {', '"plan" {'), places: ['line '] },
  { name: 'another format', file: () => '{"format": "recipe"}', places: ['format'] },
  { name: 'a newer version', file: (good) => good.replace('"version": 1', '"version": 99'), places: ['version'] },
  {
    name: 'wrong values',
    file: (good) => good.replace('"speedWpm": 15', '"speedWpm": -3').replace(/"lengthM": [\d.]+/, '"lengthM": "long"'),
    places: ['plan.speedWpm', 'cables[0].lengthM'],
  },
];

for (const { name, file, places } of broken) {
  test(`a file with ${name} is refused with every place, and the open station stays`, async ({
    page,
    address,
  }, info) => {
    await openScreen(page, address);
    await openFirstDraft(page);
    const bad = info.outputPath('bad.station.json');
    await writeFile(bad, file(await readFile(hut, 'utf8')));
    await openFile(page, bad);
    const dialog = page.getByRole('dialog', { name: 'bad.station.json could not be read' });
    for (const place of places) await expect(dialog.getByRole('list', { name: 'Problems' })).toContainText(place);
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('heading', { name: 'Hut, 30 m, first draft' })).toBeVisible();
    await expect(unit(page, 'Transmitter')).toBeVisible();
  });
}

test('a file that names what is not there is opened, and says where', async ({ page, address }, info) => {
  await openScreen(page, address);
  const file = info.outputPath('stray.station.json');
  const good = await readFile(hut, 'utf8');
  await writeFile(
    file,
    `\uFEFF${good.replace('"confirmed": true', '"confirmed": true, "overrides": { "output.vlots": 12 }')}`,
  );
  await openFile(page, file);
  const dialog = page.getByRole('dialog', { name: 'It is open' });
  await expect(dialog).toContainText('One thing in the file names nothing that is there');
  await expect(dialog.getByRole('list', { name: 'Problems' })).toContainText('units[0].overrides["output.vlots"]');
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('heading', { name: 'Hut, 30 m', exact: true })).toBeVisible();
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test('a name that no file may hold is refused beside its field, and what is typed stays', async ({ page, address }) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  const title = page.getByRole('textbox', { name: 'Title' });
  await title.fill('Hut \u202E05');
  await title.press('Enter');
  await expect(page.getByRole('alert')).toContainText('can’t be seen and does harm, U+202E');
  await expect(title).toHaveValue('Hut \u202E05');
  await expect(page.getByRole('heading', { name: 'Hut, 30 m, first draft' })).toBeVisible();
});

test('opening another file asks about unsaved changes first', async ({ page, address }) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  const title = page.getByRole('textbox', { name: 'Title' });
  await title.fill('My own');
  await title.press('Enter');
  await page.getByRole('button', { name: 'New', exact: true }).click();
  const question = page.getByRole('dialog', { name: 'Save the changes first?' });
  await question.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('heading', { name: 'My own' })).toBeVisible();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await question.getByRole('button', { name: 'Discard changes' }).click();
  await expect(page.getByRole('heading', { name: 'Draw your station' })).toBeVisible();
});

test('a number that can’t be read is refused beside its field', async ({ page, address }) => {
  await openScreen(page, address);
  const speed = page.getByRole('textbox', { name: 'Speed, WPM' });
  await speed.fill('fast');
  await speed.press('Enter');
  await expect(page.getByRole('alert')).toHaveText('“fast” is not a number.');
  await speed.press('Escape');
  await expect(speed).toHaveValue('15');
  await speed.fill('300');
  await speed.press('Enter');
  await expect(page.getByRole('alert')).toHaveText('It has to be at most 100. Words a minute are 1 to 100.');
});
