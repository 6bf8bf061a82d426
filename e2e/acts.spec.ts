import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { shelf } from '../core/catalog/kinds/index.ts';
import { edit } from '../core/station/edit.ts';
import { writeStation } from '../core/station/file/write-station.ts';
import type { Station } from '../core/station/schema/schema.ts';
import type { UnitKind } from '../core/station/schema/unit-kind.ts';
import { listActs } from '../core/whatif/acts/list-acts.ts';
import { drawStation } from '../test/stations/draw.ts';
import { sample } from '../test/stations/samples.ts';
import { expect, test } from './browser.ts';
import { openFile, openScreen, stage } from './drawing.ts';
import { Keys } from './keys.ts';

/** A station with one thing done to it that a hand does by mistake. */
function wrong(station: Station, words: RegExp): Station {
  const act = listActs(station).find((one) => words.test(one.words));
  if (!act) throw new Error(`no act ${words}`);
  return edit(station, act.change);
}

async function openWrong(page: Page, address: string, file: string, station: Station) {
  writeFileSync(file, writeStation(station));
  await openScreen(page, address);
  await openFile(page, file);
  await stage(page, 'Check').click();
}

const findings = (page: Page) => page.getByRole('complementary', { name: 'Findings' });
const first = (page: Page) => findings(page).getByRole('article').first();

/** Opens the first finding, looks at what its fix would do, and does it. */
async function putRight(page: Page, title: RegExp) {
  await first(page).getByRole('button', { name: title }).click();
  const fix = first(page).getByRole('region');
  await fix.getByRole('button', { name: 'Preview' }).click();
  await expect(fix.getByRole('status')).toHaveText(/^It removes this finding/);
  await fix.getByRole('button', { name: 'Do it' }).click();
  await expect(findings(page).getByText(title)).toHaveCount(0);
  await expect(findings(page).getByRole('button', { name: '0 danger', exact: true })).toBeVisible();
  await expect(findings(page).getByRole('button', { name: '0 fault', exact: true })).toBeVisible();
}

const receiver = shelf.find((one) => one.id === 'receiver-with-mute')?.kind as UnitKind;
/** Power comes in by a phono jack, as at home-made gear. */
const withPhonoPower: UnitKind = {
  ...receiver,
  ports: receiver.ports.map((port) => (port.id === 'power' ? { ...port, connector: 'phono-jack' } : port)),
};

test('a power plug in an antenna jack is named once, previewed, and put right by one click', async ({
  page,
  address,
}, info) => {
  const right = drawStation({
    units: { supply: 'bench-supply', receiver: { made: withPhonoPower }, antenna: 'dipole' },
    cables: [
      ['supply.out > receiver.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
      'antenna.feed > receiver.antenna',
    ],
  });
  await openWrong(page, address, info.outputPath('phono.station.json'), wrong(right, /exchanged at receiver$/));
  await expect(first(page)).toContainText('D1 belongs into receiver · power, R1 into receiver · antenna');
  await expect(first(page).getByRole('img').first()).toHaveAccessibleName('danger');
  await expect(findings(page).getByText('DC on an RF contact')).toHaveCount(0);
  await first(page)
    .getByRole('button', { name: /more that follows? from it$/ })
    .click();
  await expect(findings(page).getByText('DC on an RF contact').first()).toBeVisible();
  await putRight(page, /^Two plugs are exchanged/);
});

test('two coax leads exchanged at the changeover are named, and put right', async ({ page, address }, info) => {
  const station = wrong(sample('hut'), /^R2 and R3 exchanged at Changeover$/);
  await openWrong(page, address, info.outputPath('coax.station.json'), station);
  await expect(first(page)).toContainText(/R2 belongs into Changeover · antenna, R3 into Changeover · receiver/);
  await putRight(page, /^Two plugs are exchanged/);
});

test('a crossed lead from the supply is named once, by keys alone', async ({ page, address }, info) => {
  const station = wrong(sample('hut'), /^The two cores of D1 crossed/);
  await openWrong(page, address, info.outputPath('crossed.station.json'), station);
  await expect(first(page)).toContainText('The two cores of D1 are crossed.');
  await expect(findings(page).getByRole('button', { name: '1 danger', exact: true })).toBeVisible();
  const keys = new Keys(page);
  await keys.tabTo(first(page).getByRole('button', { name: /^The cores of a lead are crossed/ }));
  await page.keyboard.press('Enter');
  await keys.tabTo(first(page).getByRole('button', { name: 'Do it' }));
  await page.keyboard.press('Enter');
  await expect(findings(page).getByRole('button', { name: '0 danger', exact: true })).toBeVisible();
});
