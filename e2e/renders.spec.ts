import { expect, test } from './browser.ts';
import { countCardRenders, takeCardRenders } from './count-renders.ts';
import { openFirstDraft, openScreen, unit } from './drawing.ts';

test('while a unit is dragged no other card is rendered', async ({ page, address }) => {
  await countCardRenders(page);
  await openScreen(page, address);
  await openFirstDraft(page);
  // The survey's result is the last thing that renders them.
  await expect(page.getByRole('button', { name: /^Open: .*go to Check$/ })).toBeVisible();
  const drawn = Object.keys(await takeCardRenders(page));
  expect(drawn.length, 'every card is counted as it appears').toBe(await page.locator('.react-flow__node').count());

  const card = await unit(page, 'Transmitter').boundingBox();
  const id = await unit(page, 'Transmitter').getAttribute('data-id');
  if (!card || !id) throw new Error('not drawn');
  const from = { x: card.x + card.width / 2, y: card.y + 8 };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y + 10, { steps: 4 });
  // The first moves select the unit; from here on only its place changes.
  await takeCardRenders(page);
  await page.mouse.move(from.x + 140, from.y + 90, { steps: 20 });
  const rendered = await takeCardRenders(page);
  await page.mouse.up();
  expect(rendered[id]).toBeGreaterThan(2);
  expect(Object.keys(rendered)).toEqual([id]);
});
