import { expect, it } from 'vitest';
import { type Circuit, type CircuitPart, emptyCircuit } from '../../../core/circuit/circuit.ts';
import { partsAt } from '../../../core/trial/metal/parts-at.ts';

const base = { gate: [], origin: { type: 'element', unit: 'u', element: 'e' } } as const;
const resistor = (a: number, b: number): CircuitPart => ({ ...base, kind: 'resistor', a, b, ohms: 100 });
const diode: CircuitPart = {
  ...base,
  kind: 'diode',
  anode: 1,
  cathode: 2,
  saturationAmps: 1e-9,
  slopeVolts: 0.05,
  ohms: 0.1,
};

const circuit: Circuit = {
  ...emptyCircuit,
  nodes: ['0', '1', '2', '3'],
  parts: [resistor(0, 1), diode, resistor(2, 2)],
};

it.each([
  [0, [0]],
  [1, [0, 1]],
  [2, [1, 2]],
  [3, []],
  [7, []],
])('finds what ends at node %d, each part once', (node, parts) => {
  expect(partsAt(circuit, node).map(({ index }) => index)).toEqual(parts);
});
