import { expect, test } from 'vitest';
import { shelf } from '../../core/index.ts';
import { cardSize } from '../../renderer/canvas/cards/card-size.ts';
import { figureLines } from '../../renderer/canvas/cards/figures.ts';
import { textWidth } from '../../renderer/canvas/cards/text-width.ts';

const sizes = shelf.map(({ id, kind }) => ({ id, kind, size: cardSize(kind, kind.name) }));

test.each(sizes)('$id: every port is on its side of the card, on the routing grid', ({ kind, size }) => {
  expect(size.ports.map((p) => p.id).sort()).toEqual(kind.ports.map((p) => p.id).sort());
  for (const { side, x, y } of size.ports) {
    if (side === 'left') expect(x).toBe(0);
    if (side === 'right') expect(x).toBe(size.width);
    if (side === 'top') expect(y).toBe(0);
    if (side === 'bottom') expect(y).toBe(size.height);
    expect([x % 9, y % 9]).toEqual([0, 0]);
    expect(x >= 0 && x <= size.width && y >= 0 && y <= size.height).toBe(true);
  }
});

test.each(sizes)('$id: labels of opposite ports do not meet, nor do they meet the figures', ({ kind, size }) => {
  const room = (side: string) =>
    Math.max(0, ...size.ports.filter((p) => p.side === side).map((p) => textWidth(p.label, 12) + 12));
  expect(room('left') + room('right')).toBeLessThanOrEqual(size.width);
  const figuresEnd = size.headHeight + figureLines(kind) * 18;
  for (const { side, y } of size.ports) {
    if (side === 'left' || side === 'right') expect(y - 7).toBeGreaterThanOrEqual(figuresEnd);
  }
});

test.each(sizes)('$id: ports of one side are far enough apart for their flags', ({ size }) => {
  for (const one of size.ports) {
    for (const other of size.ports) {
      if (one === other || one.side !== other.side) continue;
      expect(Math.abs(one.x - other.x) + Math.abs(one.y - other.y)).toBeGreaterThanOrEqual(27);
    }
  }
});

test('a long name does not make a card wider than a line of text', () => {
  const kind = shelf[0]!.kind;
  expect(cardSize(kind, 'A supply that was bought at a fleamarket long ago and never had a name').width).toBeLessThan(
    240,
  );
});
