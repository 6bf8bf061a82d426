import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { type Circuit, type CircuitPart, never } from '../../core/circuit/circuit.ts';
import { DcSolver } from '../../core/dc/dc-solver.ts';
import { hookupsOf } from '../../core/station/parts.ts';
import { sample } from '../stations/samples.ts';

const station = sample('hut-amplifier');
const circuit = buildCircuit(station, hookupsOf(station)[0]);
const on = new Uint8Array(circuit.actors.length).fill(1);

const withParts = (change: (part: CircuitPart, i: number) => CircuitPart): Circuit => ({
  ...circuit,
  parts: circuit.parts.map(change),
});
const first = (kind: CircuitPart['kind']) => circuit.parts.findIndex((part) => part.kind === kind);

const others: [string, Circuit][] = [
  ['the same', circuit],
  ['each resistance twice as large', withParts((p) => (p.kind === 'resistor' ? { ...p, ohms: 2 * p.ohms } : p))],
  [
    'a supply with another voltage',
    withParts((p, i) => (i === first('supply') && p.kind === 'supply' ? { ...p, spec: { ...p.spec, volts: 9 } } : p)),
  ],
  ['a part that never joins', withParts((p, i) => (i === first('load') ? { ...p, gate: never } : p))],
  [
    'a part between other nodes',
    withParts((p, i) => (i === first('load') && p.kind === 'load' ? { ...p, plus: p.minus, minus: p.plus } : p)),
  ],
  [
    'one part more',
    {
      ...circuit,
      parts: [
        ...circuit.parts,
        { kind: 'resistor', a: 0, b: 9, ohms: 5, gate: [], origin: { type: 'cableFuse', cable: '' } },
      ],
    },
  ],
];

/** To eleven digits: a state that differs less is taken as the same. */
function expectSame(some: Float64Array, others: Float64Array) {
  expect(some.length).toBe(others.length);
  const apart = some.map((value, i) => {
    const other = others[i] as number;
    return Math.abs(value - other) - 1e-13 - 1e-11 * Math.max(Math.abs(value), Math.abs(other));
  });
  expect(Math.max(...apart)).toBeLessThanOrEqual(0);
}

// In a loop, so that its current matters: the metal that goes round through cases and screens.
const inLoop = (part: CircuitPart): boolean => part.kind === 'resistor' && part.origin.type === 'chassis';
const gated = withParts((p) => (inLoop(p) ? { ...p, gate: [{ actor: 0, on: true }] } : p));

describe('the solver of another circuit', () => {
  it.each([0, 1])(
    'in which an actor moves what nothing moved before gives what one made anew gives (on: %i)',
    (first) => {
      const state = on.slice();
      state[0] = first;
      const solver = new DcSolver(circuit);
      solver.solve(state).amps;
      expectSame(solver.solverOf(gated).solve(state).amps, new DcSolver(gated).solve(state).amps);
    },
  );

  it.each(others)('with %s gives what one made anew gives, and leaves the first as it was', (_, other) => {
    const solver = new DcSolver(circuit);
    const before = [...solver.solve(on).amps];
    const [fast, anew] = [solver.solverOf(other).solve(on), new DcSolver(other).solve(on)];
    expectSame(fast.amps, anew.amps);
    expectSame(fast.volts, anew.volts);
    expect([...solver.solve(on).amps]).toEqual(before);
    expect(before.some((amps) => amps > 0.1)).toBe(true);
  });
  it('with something different gives something else', () => {
    const solver = new DcSolver(circuit);
    const amps = [...solver.solve(on).amps];
    // With all on, the first supply has shut down: its volts do not matter.
    const different = others.slice(1).filter(([name]) => !name.includes('voltage'));
    for (const [, other] of different) expect([...solver.solverOf(other).solve(on).amps]).not.toEqual(amps);
  });
});
