import { describe, expect, it } from 'vitest';
import { type Circuit, emptyCircuit } from '../../../core/circuit/circuit.ts';
import { conductorsOf } from '../../../core/trial/metal/conductors.ts';
import { leastWay } from '../../../core/trial/metal/least-way.ts';

const origin = { type: 'element', unit: 'u', element: 'e' } as const;

/** Resistors between nodes by number. */
const net = (ohms: readonly (readonly [number, number, number])[]): Circuit => ({
  ...emptyCircuit,
  nodes: ['0', '1', '2', '3'],
  parts: ohms.map(([a, b, value]) => ({ kind: 'resistor', a, b, ohms: value, gate: [], origin })),
});

const way = (circuit: Circuit, from: number, to: number) =>
  leastWay(circuit, conductorsOf(circuit, new Uint8Array()), from, to);

describe('the way of least resistance', () => {
  it('goes round where that is shorter', () => {
    const circuit = net([
      [0, 3, 10],
      [0, 1, 1],
      [1, 2, 1],
      [2, 3, 1],
    ]);
    expect(way(circuit, 0, 3)).toEqual({ parts: [1, 2, 3], ohms: 3 });
    expect(way(circuit, 3, 0)).toEqual({ parts: [3, 2, 1], ohms: 3 });
  });
  it.each([-1, -1e12, Number.NaN, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY])(
    'comes to an end with %d ohms in a ring',
    (ohms) => {
      const circuit = net([
        [0, 1, 1],
        [1, 2, ohms],
        [2, 0, ohms],
        [2, 3, 1],
      ]);
      for (const to of [1, 2, 3]) expect(way(circuit, 0, to)?.parts.length ?? 0).toBeLessThanOrEqual(3);
    },
  );
});
