import type { Page } from 'playwright-core';
import { openFile, openScreen } from '../../../e2e/drawing.ts';

declare global {
  interface Window {
    pictureMs: Promise<number>;
  }
}

/** Opens a file on the app's screen; the milliseconds from its being read to the frame that shows all of it. */
export async function firstPicture(
  page: Page,
  address: string,
  file: string,
  count: { units: number; cables: number },
): Promise<number> {
  await openScreen(page, address);
  await page.getByRole('heading', { name: 'Draw your station' }).waitFor();
  await page.evaluate(({ units, cables }) => {
    const read = Blob.prototype.text;
    window.pictureMs = new Promise((resolve) => {
      Blob.prototype.text = function text() {
        const start = performance.now();
        const look = () => {
          const cards = document.querySelectorAll('.react-flow__node .unit').length;
          const lines = document.querySelectorAll('.react-flow__edge .cable').length;
          // A frame asked for before this one is painted comes after it.
          if (cards === units && lines === cables) requestAnimationFrame(() => resolve(performance.now() - start));
          else requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
        return read.call(this);
      };
    });
  }, count);
  await openFile(page, file);
  return page.evaluate(() => window.pictureMs);
}
