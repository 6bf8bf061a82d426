import { expect, test } from './browser.ts';
import { openFirstDraft, openScreen } from './drawing.ts';

test('ports on every side of a card are as large as each other, and show their connector', async ({
  page,
  address,
}) => {
  await openScreen(page, address);
  await openFirstDraft(page);
  const ports = await page.locator('.react-flow__handle').evaluateAll((all) =>
    all.map((port) => {
      const face = port.querySelector('svg.face');
      const size = `${(port as HTMLElement).offsetWidth} × ${(port as HTMLElement).offsetHeight}`;
      const style = face && getComputedStyle(face);
      return { side: port.getAttribute('data-handlepos'), size, face: style && `${style.width} × ${style.height}` };
    }),
  );
  expect(new Set(ports.map((p) => p.side))).toEqual(new Set(['left', 'right', 'top', 'bottom']));
  expect(ports.filter((p) => p.size !== '24 × 24' || p.face !== '24px × 24px')).toEqual([]);
});
