import { describe, expect, it } from 'vitest';
import { tileDrawing } from '../../renderer/print/drawing/tile-drawing.ts';

const room = { widthMm: 268, heightMm: 154 };
const bounds = (width: number, height: number) => ({ x: -100, y: 50, width, height });

describe('a drawing on pages', () => {
  it('is on one page, no larger than on the screen, where its labels can be read', () => {
    const { scale, tiles } = tileDrawing(bounds(400, 300), room);
    expect(scale).toBeCloseTo(25.4 / 96, 6);
    expect(tiles).toEqual([{ name: '', view: bounds(400, 300) }]);
    // 1500 pixels on 268 mm: 0.1787 mm each, so a label of 12 pixels is 2.1 mm or 6 points high.
    expect(tileDrawing(bounds(1500, 800), room)).toMatchObject({ scale: 268 / 1500, tiles: [{ name: '' }] });
  });
  it('goes over several pages where it would be too small, each part of it on at least one', () => {
    const whole = bounds(3000, 1700);
    const { scale, tiles } = tileDrawing(whole, room);
    // At 0.2 mm a pixel a page shows 1340 by 770 pixels, neighbours share 50: 3 across, 3 down.
    expect(scale).toBe(0.2);
    expect(tiles.map((t) => t.name)).toEqual(['A1', 'A2', 'A3', 'B1', 'B2', 'B3', 'C1', 'C2', 'C3']);
    for (const { view } of tiles) expect(view).toMatchObject({ width: 1340, height: 770 });
    const [first, second, last] = [tiles[0]!.view, tiles[1]!.view, tiles.at(-1)!.view];
    expect([first.x, first.y]).toEqual([-100, 50]);
    expect(first.x + first.width - second.x).toBeGreaterThanOrEqual(50);
    expect(last.x + last.width).toBeCloseTo(whole.x + whole.width, 6);
    expect(last.y + last.height).toBeCloseTo(whole.y + whole.height, 6);
  });
  it('needs no second row where it is low', () => {
    expect(tileDrawing(bounds(2600, 500), room).tiles.map((t) => t.name)).toEqual(['A1', 'A2']);
  });
});
