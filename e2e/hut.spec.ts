import type { Page } from '@playwright/test';
import { expect, test } from './browser.ts';
import { openScreen, port, stage, unit } from './drawing.ts';
import { Gestures } from './gestures.ts';
import { Keys } from './keys.ts';
import { saved } from './saved.ts';

/** The units of the hut: their row on the shelf, and the name that they get. */
const units: [RegExp, string][] = [
  [/^Bench supply, 13.8 V 3 A/, 'Bench supply'],
  [/^Fused strip/, 'Fused strip'],
  [/^CW transmitter, 3 W/, 'CW transmitter'],
  [/^Receiver with mute/, 'Receiver with mute'],
  [/^Changeover by its line/, 'Changeover by its line'],
  [/^Meter, SWR and power 15 W/, 'Meter'],
  [/^Tuner, manual/, 'Tuner'],
  [/^Dummy load, 5 W/, 'Dummy load'],
  [/^Arrestor, gas tube/, 'Arrestor'],
  [/^Wire antenna/, 'Wire antenna'],
  [/^Earth bar/, 'Earth bar'],
  [/^Paddle/, 'Paddle'],
  [/^Keyer/, 'Keyer'],
  [/^Headphones/, 'Headphones'],
];

/** Its cables; the last one is plugged in for the dummy load only. */
const cables: [[string, string], [string, string]][] = [
  [
    ['Bench supply', ''],
    ['Fused strip', 'in'],
  ],
  [
    ['Fused strip', '1'],
    ['CW transmitter', 'power'],
  ],
  [
    ['Fused strip', '2'],
    ['Changeover by its line', 'power'],
  ],
  [
    ['Fused strip', '3'],
    ['Receiver with mute', 'power'],
  ],
  [
    ['CW transmitter', 'antenna'],
    ['Changeover by its line', 'transmitter'],
  ],
  [
    ['Changeover by its line', 'antenna'],
    ['Meter', 'transmitter'],
  ],
  [
    ['Changeover by its line', 'receiver'],
    ['Receiver with mute', 'antenna'],
  ],
  [
    ['Meter', 'antenna'],
    ['Tuner', 'transmitter'],
  ],
  [
    ['Tuner', 'antenna'],
    ['Arrestor', 'station'],
  ],
  [
    ['Arrestor', 'antenna'],
    ['Wire antenna', ''],
  ],
  [
    ['Arrestor', 'earth'],
    ['Earth bar', '1'],
  ],
  [
    ['Paddle', ''],
    ['Keyer', 'paddle'],
  ],
  [
    ['Keyer', 'key out'],
    ['Changeover by its line', 'line'],
  ],
  [
    ['Changeover by its line', 'key out'],
    ['CW transmitter', 'key'],
  ],
  [
    ['Changeover by its line', 'mute'],
    ['Receiver with mute', 'mute'],
  ],
  [
    ['Receiver with mute', 'phones'],
    ['Headphones', ''],
  ],
  [
    ['Meter', 'antenna'],
    ['Dummy load', ''],
  ],
];

const mostGestures = 70;

test('the whole hut is drawn from an empty sheet in few gestures, and nothing is wrong with it', async ({
  page,
  address,
}, info) => {
  await openScreen(page, address);
  await expect(page.getByRole('heading', { name: 'Draw your station' })).toBeVisible();
  const hand = new Gestures(page);
  const details = page.getByRole('complementary', { name: 'Details' });
  const plan = (label: string) => details.getByRole('textbox', { name: label });

  for (const [row, name] of units) await hand.take(row, name);
  for (const [from, to] of cables.slice(0, -1)) await hand.lay(from, to);
  await hand.click(page.getByRole('button', { name: 'Tidy' }));
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /Tidy up/);

  // Free paper: the station itself.
  await hand.click(page.getByRole('main'), { x: 8, y: 8 });
  await hand.fill(plan('Title'), 'Hut, 30 m');
  await hand.fill(plan('Frequency'), '10.12 MHz');
  await hand.fill(plan('Hours a day'), '2');
  await hand.click(details.getByRole('button', { name: 'Add a hook-up' }));
  await hand.click(details.getByRole('button', { name: 'Add a hook-up' }));
  await hand.fill(details.getByRole('textbox', { name: 'Hook-up 2' }), 'On the dummy load');
  const [from, to] = cables.at(-1) ?? cables[0]!;
  await hand.lay(from, to);

  info.annotations.push({ type: 'gestures', description: String(hand.count) });
  console.log(`the hut took ${hand.count} gestures`);
  expect(hand.count).toBeLessThanOrEqual(mostGestures);
  await expectHut(page, info.outputPath('hut.station.json'));
});

test('the whole hut is drawn from an empty sheet by keys alone', async ({ page, address }, info) => {
  await openScreen(page, address);
  const keys = new Keys(page);
  const details = page.getByRole('complementary', { name: 'Details' });
  const field = (label: string) => details.getByRole('textbox', { name: label });

  for (const [row, name] of units) {
    await keys.find(`new unit ${row.source.slice(1)}`);
    await expect.poll(() => keys.isOn(unit(page, name))).toBe(true);
  }
  for (const [from, to] of cables.slice(0, -1)) await joinByKeys(from, to);
  await keys.find('tidy');
  await keys.find('station’s plan');
  await keys.fill(field('Title'), 'Hut, 30 m');
  await keys.fill(field('Frequency'), '10.12 MHz');
  await keys.fill(field('Hours a day'), '2');
  for (let i = 0; i < 2; i++) {
    await keys.tabTo(details.getByRole('button', { name: 'Add a hook-up' }));
    await keys.press('Enter');
  }
  await keys.find('station’s plan');
  await keys.fill(field('Hook-up 2'), 'On the dummy load');
  const [from, to] = cables.at(-1) ?? cables[0]!;
  await joinByKeys(from, to);
  await expectHut(page, info.outputPath('hut.station.json'));

  async function joinByKeys([unitName, label]: [string, string], [otherUnit, otherLabel]: [string, string]) {
    const start = port(page, unitName, label);
    await keys.find(label === '' ? `unit ${unitName}` : `port ${unitName} · ${label}`);
    // What was found gets the keyboard once it is shown: a Tab before that would start from elsewhere.
    await expect.poll(() => keys.isOn(label === '' ? unit(page, unitName) : start)).toBe(true);
    await keys.tabTo(start);
    await keys.join(otherLabel === '' ? otherUnit : `${otherUnit} · ${otherLabel}`);
    await expect.poll(() => keys.isOn(start)).toBe(true);
  }
});

/** The drawing is the hut: its units, cables, hook-ups and plan, and nothing above a note to say of it. */
async function expectHut(page: Page, file: string) {
  const station = await saved(page, file);
  expect(station.title).toBe('Hut, 30 m');
  expect(station.units.map((u) => u.name).sort()).toEqual(units.map(([, name]) => name).sort());
  expect(station.cables).toHaveLength(cables.length);
  expect(station.hookups.map((h) => h.name)).toEqual(['On the air', 'On the dummy load']);
  expect(station.plan).toMatchObject({ frequencyHz: 10_120_000, hoursPerDay: 2 });
  const hookupsOf = (a: string, b: string) => {
    const ids = [a, b].map((name) => station.units.find((u) => u.name === name)?.id);
    return station.cables.find((c) => ids.includes(c.a.unit) && ids.includes(c.b.unit))?.hookups;
  };
  const [air, dummy] = station.hookups.map((h) => h.id);
  expect(hookupsOf('Meter', 'Tuner')).toEqual([air]);
  expect(hookupsOf('Meter', 'Dummy load')).toEqual([dummy]);
  await stage(page, 'Check').click();
  const counts = page.getByRole('list', { name: 'Open findings by severity' });
  for (const severity of ['danger', 'fault', 'doubt']) {
    await expect(counts.getByText(new RegExp(`^0 ${severity}`))).toBeVisible();
  }
  await expect(unit(page, 'CW transmitter')).toBeVisible();
  await expect(port(page, 'Receiver with mute', 'mute')).toBeVisible();
}
