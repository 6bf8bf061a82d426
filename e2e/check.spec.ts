import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen, stage, unit, withGliding } from './drawing.ts';
import { mistakes } from './mistakes.ts';

test.beforeEach(async ({ page, address }) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  await stage(page, 'Check').click();
});

test('the mistakes of the first draft are listed, worst first, with what follows folded under them', async ({
  page,
}) => {
  const findings = page.getByRole('complementary', { name: 'Findings' });
  await expect(findings.getByRole('heading', { level: 3 }).first()).toHaveText('Plus and minus are swapped');
  for (const title of [
    'The changeover is wired the wrong way round',
    'The fuse is too big for the wire',
    'A mono plug in a stereo jack',
  ]) {
    await expect(findings.getByRole('button', { name: title })).toBeVisible();
  }
  const fold = findings.getByRole('button', { name: /more that follow from it/ }).first();
  const before = await findings.getByRole('article').count();
  await fold.click();
  expect(await findings.getByRole('article').count()).toBeGreaterThan(before);
});

test('a click shows the place: in view, selected, and with its reason', async ({ page }) => {
  await withGliding(page);
  await page.getByRole('button', { name: 'Zoom in' }).click();
  await page.getByRole('button', { name: 'Zoom in' }).click();
  const finding = page.getByRole('article').filter({ hasText: 'A mono plug in a stereo jack' });
  await finding.getByRole('button', { name: 'A mono plug in a stereo jack' }).click();
  await expect(finding.getByText('What to do.')).toBeVisible();
  await expect(unit(page, 'Phones')).toBeInViewport();
  await expect(unit(page, 'Receiver')).toBeInViewport();
  await finding.getByRole('button', { name: /^A1 at/ }).click();
  await stage(page, 'Draw').click();
  await expect(page.getByRole('complementary', { name: 'Details' }).getByRole('heading', { name: 'A1' })).toBeVisible();
});

test('a finding is accepted with a reason, taken back, and both can be undone', async ({ page }) => {
  const title = page.getByRole('button', { name: 'A mono plug in a stereo jack' });
  const accepted = page.getByRole('region', { name: 'Accepted' });
  await title.click();
  await page.getByRole('button', { name: 'Accept it with a reason' }).click();
  await page.getByRole('textbox', { name: 'Why is it all right?' }).fill('One ear is enough for now');
  await page.getByRole('button', { name: 'Accept', exact: true }).click();
  await expect(accepted.getByText('Accepted: One ear is enough for now')).toBeVisible();
  await expect(page.getByText('not saved yet')).toBeVisible();

  await accepted.getByRole('button', { name: 'Take back' }).click();
  await expect(accepted).toHaveCount(0);
  await expect(title).toBeVisible();

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(accepted).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(accepted).toHaveCount(0);
});

test('each mistake with a fix is put right by a click, and nothing above a note is left', async ({ page }) => {
  const findings = page.getByRole('complementary', { name: 'Findings' });
  for (const [title, , fix] of mistakes) {
    const article = findings
      .getByRole('article')
      .filter({ has: page.getByRole('button', { name: title }) })
      .first();
    await article.getByRole('button', { name: title }).click();
    const preview = article.getByRole('region', { name: fix });
    await preview.getByRole('button', { name: 'Do it' }).click();
    await expect(preview).toHaveCount(0);
  }
  await expect(findings.getByLabel('Open findings by severity')).not.toContainText(/[1-9]\d* (danger|fault|doubt)/);
  await expect(page.getByRole('button', { name: /go to Check/ })).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(findings).toContainText('No hook-up for a test without the antenna');
});

test('the key-down strip says what happens when', async ({ page }) => {
  const strip = page.getByRole('region', { name: 'Key-down' });
  await expect(strip).toContainText('RF from 14 ms to 83 ms');
  await expect(strip.getByRole('listitem').filter({ hasText: 'Changeover relay' })).toContainText('7 ms to 85 ms');
});
