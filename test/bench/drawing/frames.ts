import type { Page } from 'playwright-core';

declare global {
  interface Window {
    frameTimes: number[];
    countingFrames: boolean;
  }
}

/** Times between frames in milliseconds while a unit is dragged in a loop over the drawing by `moves` moves. */
export async function framesOfDrag(page: Page, unit: string, moves = 100): Promise<number[]> {
  const box = await page.locator(`.react-flow__node[data-id="${unit}"]`).boundingBox();
  const paper = await page.locator('.react-flow').boundingBox();
  if (!box || !paper) throw new Error(`${unit} is not on the drawing`);
  // The head of the card has no port; at a small zoom it is a few pixels high.
  const from = { x: box.x + box.width / 2, y: box.y + Math.min(8, box.height / 6) };
  const toMiddle = {
    x: Math.sign(paper.x + paper.width / 2 - from.x),
    y: Math.sign(paper.y + paper.height / 2 - from.y),
  };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  // Past the distance from which on it counts as a drag; the first frame of one also selects the unit.
  await page.mouse.move(from.x + toMiddle.x * 12, from.y + toMiddle.y * 12, { steps: 4 });
  await startCounting(page);
  for (let i = 1; i <= moves; i++) {
    const turn = (i / moves) * 2 * Math.PI;
    const across = from.x + toMiddle.x * (12 + 0.2 * paper.width * (1 - Math.cos(turn)));
    const down = from.y + toMiddle.y * (12 + 0.2 * paper.height * (1 - Math.cos(2 * turn)));
    await page.mouse.move(across, down);
  }
  const times = await page.evaluate(() => {
    window.countingFrames = false;
    return window.frameTimes;
  });
  await page.mouse.up();
  const moved = await page.locator(`.react-flow__node[data-id="${unit}"]`).boundingBox();
  if (!moved || Math.hypot(moved.x - box.x, moved.y - box.y) < 4) throw new Error(`${unit} was not dragged`);
  return times;
}

async function startCounting(page: Page) {
  await page.evaluate(() => {
    window.frameTimes = [];
    window.countingFrames = true;
    let last = performance.now();
    const count = (now: number) => {
      if (!window.countingFrames) return;
      window.frameTimes.push(now - last);
      last = now;
      requestAnimationFrame(count);
    };
    requestAnimationFrame((now) => {
      last = now;
      requestAnimationFrame(count);
    });
  });
}

/** Bytes of the page's heap once the rubbish has gone. */
export async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  return usedSize;
}
