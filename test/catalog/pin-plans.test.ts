import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import type { PinPlan } from '../../core/catalog/pins/pin-plan.ts';
import { pinPlanOf } from '../../core/catalog/pins/pin-plan-of.ts';

const plan = (id: string): PinPlan => pinPlanOf(connectors[id]!);
/** The pins of one row from the left, rows from the top. */
function rowsOf({ pins }: PinPlan): number[][] {
  const height = ({ y }: { y: number }) => Math.round(y * 1000) || 0;
  const heights = [...new Set(pins.map(height))].sort((a, b) => a - b);
  return heights.map((y) =>
    pins
      .filter((pin) => height(pin) === y)
      .sort((a, b) => a.x - b.x)
      .map((pin) => Number(pin.id.slice(3))),
  );
}

describe('pins seen from the solder side', () => {
  it.each([
    // A plug's face has pin 1 at the upper left (IEC 60807), so its back has it at the upper right.
    [
      'd-sub-9-plug',
      [
        [5, 4, 3, 2, 1],
        [9, 8, 7, 6],
      ],
    ],
    [
      'd-sub-9-jack',
      [
        [1, 2, 3, 4, 5],
        [6, 7, 8, 9],
      ],
    ],
    [
      'd-sub-15-plug',
      [
        [8, 7, 6, 5, 4, 3, 2, 1],
        [15, 14, 13, 12, 11, 10, 9],
      ],
    ],
    // Into the socket 6-5, 4-3, 2-1 with the key on top (pin-outs of keyboard jacks); a plug's back is the same.
    [
      'mini-din-6-plug',
      [
        [6, 5],
        [4, 3],
        [2, 1],
      ],
    ],
    // IEC 60603-7.
    ['rj45-plug', [[1, 2, 3, 4, 5, 6, 7, 8]]],
    // DIN 41524: 1-4-2-5-3 from the left, pin 2 in the middle of the arc, on top.
    ['din-5-plug', [[2], [4, 5], [1, 3]]],
    ['din-5-jack', [[2], [5, 4], [3, 1]]],
  ])('%s', (id, rows) => expect(rowsOf(plan(id))).toEqual(rows));

  it('no two pins of any connector touch, and all are inside its outline', () => {
    for (const [id, connector] of Object.entries(connectors).filter(([, c]) => c.contacts.length > 4)) {
      const { pins, widthMm, heightMm, source } = pinPlanOf(connector);
      expect(pins.map((pin) => pin.id).sort(), id).toEqual(connector.contacts.map((c) => c.id).sort());
      expect(source).not.toBe('');
      pins.forEach((pin, i) => {
        expect(Math.abs(pin.x), id).toBeLessThan(widthMm / 2);
        expect(Math.abs(pin.y), id).toBeLessThan(heightMm / 2);
        for (const other of pins.slice(i + 1))
          expect(Math.hypot(pin.x - other.x, pin.y - other.y), `${id} ${pin.id} ${other.id}`).toBeGreaterThan(1);
      });
    }
  });
  it('where no plan is known they stand in their order, and it says so', () => {
    const { outline, source } = plan('wires-8');
    expect([outline, source]).toEqual(['box', 'no plan: go by the numbers on the plug']);
  });
});
