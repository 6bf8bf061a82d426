import { describe, expect, it } from 'vitest';
import { axisRange, roundTicks, scaleOf } from '../../renderer/stages/budget/charts/scale.ts';

describe('round ticks', () => {
  it.each([
    [0, 0.62, 5, [0, 0.2, 0.4, 0.6]],
    [13.67, 13.77, 4, [13.7, 13.75]],
    [0, 49, 8, [0, 10, 20, 30, 40]],
    [34.3, 34.85, 4, [34.4, 34.6, 34.8]],
    [-3, 3, 3, [-2, 0, 2]],
    [5, 5, 4, [5]],
  ])('from %d to %d, about %i', (from, to, about, ticks) => expect(roundTicks(from, to, about)).toEqual(ticks));
  it('are never many more than asked for, and none is outside', () => {
    for (const to of [0.003, 0.7, 1, 9.99, 10, 12_345]) {
      const ticks = roundTicks(0, to, 6);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(ticks.length).toBeLessThanOrEqual(8);
      expect(Math.max(...ticks)).toBeLessThanOrEqual(to * (1 + 1e-9));
    }
  });
});

describe('scales', () => {
  it('lie evenly between their ends', () => {
    const x = scaleOf(10, 20, 100, 200);
    expect([x(10), x(15), x(20)]).toEqual([100, 150, 200]);
  });
  it('without extent put all in the middle', () => expect(scaleOf(5, 5, 0, 80)(5)).toBe(40));
  it('have room at both ends, and a least span', () => {
    expect(axisRange([0, 100], 1)).toEqual({ from: -6, to: 106 });
    expect(axisRange([3, 3], 1)).toEqual({ from: 2.5, to: 3.5 });
  });
});
