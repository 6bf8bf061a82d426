import { expect, test } from './browser.ts';
import { openFile, openFirstDraft, openSample, openScreen, stage, unit } from './drawing.ts';
import { Gestures } from './gestures.ts';
import { Keys } from './keys.ts';
import { saved } from './saved.ts';
import { seriousProblems } from './serious-problems.ts';

type Page = Parameters<typeof stage>[0];

const sheet = (page: Page) => page.getByRole('complementary', { name: 'Power-up' });

/** A step by what it says. */
const step = (page: Page, words: RegExp) => sheet(page).getByRole('listitem').filter({ hasText: words });

const supplyAlone = /Bench supply on, nothing on it/;
const receiversPlug = /Plug of D4, before it goes into Receiver/;

async function openHut(page: Page) {
  await openSample(page, 'The hut, put right', 'Hut, 30 m');
  await expect(unit(page, 'Transmitter')).toBeVisible();
}

test('a reading that is off says why, and all readings are there when the file is opened again', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await openHut(page);
  const hand = new Gestures(page);
  await hand.click(stage(page, 'Power-up'));
  const supply = step(page, supplyAlone);
  await expect(supply.getByText('Expect 13.80 V')).toBeVisible();
  await expect(sheet(page).getByText(/^0 of \d+ done/)).toBeVisible();

  await hand.fill(supply.getByRole('textbox'), '13,75');
  await expect(supply.getByText('right')).toBeVisible();
  const plug = step(page, receiversPlug);
  await hand.fill(plug.getByRole('textbox'), '-13.8');
  await expect(plug.getByText('too low')).toBeVisible();
  const cause = plug.getByRole('button', { name: 'Plus and minus of D4 are swapped' });
  await expect(cause).toBeVisible();
  await expect(sheet(page).getByText(/^2 of \d+ done, 1 off/)).toBeVisible();
  await hand.click(cause);
  await expect(page.locator('.react-flow__edge.selected')).toHaveCount(1);

  const file = info.outputPath('hut.station.json');
  const { readings } = await saved(page, file);
  expect(readings.map(({ step: id, value, unit: of }) => [id, value, of])).toEqual([
    ['supply/supply.output/volts', 13.75, 'V'],
    ['unit/receiver/plug', -13.8, 'V'],
  ]);
  for (const { when } of readings) expect(Date.parse(when)).toBeGreaterThan(Date.parse('2026-01-01'));

  await page.reload();
  await openFile(page, file);
  await expect(page.getByRole('heading', { name: 'Hut, 30 m', exact: true })).toBeVisible();
  await stage(page, 'Power-up').click();
  await expect(step(page, supplyAlone).getByRole('textbox')).toHaveValue('13.75 V');
  await expect(step(page, receiversPlug).getByRole('textbox')).toHaveValue('−13.80 V');
  await expect(step(page, receiversPlug).getByText('Plus and minus of D4 are swapped')).toBeVisible();

  // Another round: the boxes are empty, what was read stands beside them.
  await sheet(page).getByRole('button', { name: 'Begin a new round' }).click();
  await expect(step(page, supplyAlone).getByRole('textbox')).toHaveValue('');
  await expect(step(page, supplyAlone).getByText(/^Last time 13\.75 V, \d{4}-\d\d-\d\d$/)).toBeVisible();
  await step(page, supplyAlone).getByRole('textbox').fill('13.7');
  await page.keyboard.press('Enter');
  await expect(sheet(page).getByText(/^1 of \d+ done/)).toBeVisible();
  expect((await saved(page, info.outputPath('again.station.json'))).readings).toHaveLength(3);
});

test('by keys alone: a reading, its cause, the unit’s own figure, and undo', async ({ page, address }, info) => {
  await openScreen(page, address);
  await openHut(page);
  const keys = new Keys(page);
  await keys.find('go to power-up');
  const supply = step(page, supplyAlone);
  await expect(supply).toBeVisible();
  await keys.fill(supply.getByRole('textbox'), '12.6');
  await expect(supply.getByText('too low')).toBeVisible();
  await expect(supply.getByText(/Bench supply’s voltage is 12\.60 V, not 13\.80 V/)).toBeVisible();
  await keys.tabTo(supply.getByRole('button', { name: 'Take 12.60 V as Bench supply’s voltage' }));
  await keys.press('Enter');
  await expect(supply.getByText('Expect 12.60 V')).toBeVisible();
  await expect(supply.getByText('right')).toBeVisible();
  const taken = await saved(page, info.outputPath('taken.station.json'));
  expect(taken.units.find((u) => u.id === 'supply')?.overrides).toEqual({ 'output.volts': 12.6 });
  await keys.press('Control+z');
  await expect(supply.getByText('Expect 13.80 V')).toBeVisible();
  await expect(supply.getByRole('textbox')).toHaveValue('12.60 V');
  await keys.press('Control+z');
  await expect(supply.getByRole('textbox')).toHaveValue('');
});

test('5 goes to the stage; what can’t be read is said, and nothing is lost', async ({ page, address }) => {
  await openScreen(page, address);
  await openHut(page);
  await page.keyboard.press('5');
  const box = step(page, supplyAlone).getByRole('textbox');
  await box.fill('thirteen');
  await box.press('Enter');
  await expect(step(page, supplyAlone).getByRole('alert')).toHaveText('“thirteen” is not a number.');
  await expect(box).toHaveValue('thirteen');
  await box.fill('13.8');
  await box.press('Enter');
  await expect(step(page, supplyAlone).getByText('right')).toBeVisible();
  await box.fill('');
  await box.press('Enter');
  await expect(sheet(page).getByText(/^0 of \d+ done/)).toBeVisible();
  // An ohmmeter that shows no end.
  const across = step(page, /^\d*D1, unplugged: between plus and minus/).getByRole('textbox');
  await across.fill('OL');
  await across.press('Enter');
  await expect(across).toHaveValue('open');
});

test('the first draft is to be put right first, and the swapped plug is not to go in', async ({ page, address }) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  await stage(page, 'Power-up').click();
  await expect(sheet(page).getByRole('heading', { name: 'Put right first' })).toBeVisible();
  await expect(step(page, receiversPlug).getByText('Do not plug it in')).toBeVisible();
  await expect(sheet(page).getByText('No hook-up leads into a dummy load.')).toBeVisible();
});

test('a unit that is said to stand outdoors: nobody moves its leads while it sends', async ({ page, address }) => {
  await openScreen(page, address);
  await openHut(page);
  await unit(page, 'Meter').click();
  const outdoors = page.getByRole('checkbox', { name: 'It stands outdoors' });
  await expect(outdoors).not.toBeChecked();
  await outdoors.check();
  await page.keyboard.press('Escape');
  await stage(page, 'Power-up').click();
  await expect(step(page, /Before plugging .*R2/)).toBeVisible();
  await expect(step(page, /At the lowest power into the dummy load, indoors: move R1 at both plugs/)).toBeVisible();
});

for (const theme of ['light', 'dark'] as const) {
  test(`nothing serious stands in the way, ${theme}`, async ({ page, address }) => {
    await openScreen(page, address, theme);
    await openHut(page);
    await stage(page, 'Power-up').click();
    await step(page, supplyAlone).getByRole('textbox').fill('13.8');
    await step(page, receiversPlug).getByRole('textbox').fill('0');
    // A jump scrolls the sheet, not the window with its title bar.
    await sheet(page).getByRole('button', { name: 'Spares' }).click();
    await expect(page.getByRole('banner')).toBeInViewport({ ratio: 1 });
    await page.keyboard.press('Enter');
    await expect(step(page, receiversPlug).getByText(/likeliest first/)).toBeVisible();
    expect(await seriousProblems(page)).toEqual([]);
  });
}
