import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Circuit, isOpenGate } from '../../core/circuit/circuit.ts';
import { endsOf } from '../../core/dc/elimination-plan.ts';
import type { Reach, Trial } from '../../core/keydown/key-down.ts';
import { anyStation } from '../stations/random-station.ts';
import { trialsOf } from './trials-of.ts';

/** Receive at first and at rest, and every moment of every key-down. */
const reachesOf = (trial: Trial): Reach[] => [
  trial.atFirst,
  trial.receive,
  ...trial.keyDowns.flatMap((k) => k.moments.map((m) => m.reach)),
];

/** Amperes into each node from all parts, and the largest that flows at it. */
function sums({ nodes, parts }: Circuit, { dc }: Reach) {
  const into = new Float64Array(nodes.length);
  const largest = new Float64Array(nodes.length).fill(1e-9);
  const flow = (from: number, to: number, amps: number) => {
    into[from] = (into[from] as number) - amps;
    into[to] = (into[to] as number) + amps;
    for (const node of [from, to]) largest[node] = Math.max(largest[node] as number, Math.abs(amps));
  };
  parts.forEach((part, i) => {
    const [a, b] = endsOf(part);
    const amps = dc.ampsIn(i);
    const isSource = part.kind === 'supply' || part.kind === 'pullUp';
    flow(a, b, isSource ? -amps : amps);
    // What a pull-up gives, its regulator takes from the unit's plus.
    if (part.kind === 'pullUp' && part.fedFrom !== null && dc.between(part.fedFrom, part.node) !== null)
      flow(part.fedFrom, part.reference, amps);
  });
  return { into, largest };
}

/** Watts that supplies and pull-ups make, and that everything takes: loads, wires, joints, diodes, source resistances. */
function watts({ parts }: Circuit, { dc, on }: Reach) {
  let given = 0;
  let taken = 0;
  parts.forEach((part, i) => {
    if (!isOpenGate(part.gate, on)) return;
    const [a, b] = endsOf(part);
    const amps = dc.ampsIn(i);
    const volts = dc.between(a, b) ?? 0;
    if (part.kind === 'supply' || part.kind === 'pullUp') {
      given += volts * amps;
      const feed = part.kind === 'pullUp' && part.fedFrom !== null ? dc.between(part.fedFrom, part.reference) : null;
      if (feed !== null && part.kind === 'pullUp' && dc.between(part.fedFrom as number, part.node) !== null)
        taken += feed * amps;
    } else if (part.kind === 'resistor') taken += amps * amps * Math.max(part.ohms, 1e-6);
    else taken += volts * amps;
  });
  return { given, taken };
}

describe('laws of circuits, on stations drawn at random', () => {
  it('the currents at every node sum to zero, in every moment (Kirchhoff’s current law)', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        for (const { trial } of trialsOf(station)) {
          for (const reach of reachesOf(trial)) {
            const { into, largest } = sums(trial.circuit, reach);
            const isOff = (_: unknown, node: number) =>
              !(Math.abs(into[node] as number) <= 1e-8 * (largest[node] as number) + 1e-10);
            expect(trial.circuit.nodes.filter(isOff)).toEqual([]);
          }
        }
      }),
      { numRuns: 120 },
    );
  });
  it('what the supplies give is what loads and resistances take (conservation of energy)', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        for (const { trial } of trialsOf(station)) {
          for (const reach of reachesOf(trial)) {
            const { given, taken } = watts(trial.circuit, reach);
            expect(Math.abs(given - taken)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(given)));
          }
        }
      }),
      { numRuns: 120 },
    );
  });
  it('always finds a balance', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        for (const { trial } of trialsOf(station))
          for (const reach of reachesOf(trial)) expect(reach.dc.settled).toBe(true);
      }),
      { numRuns: 120 },
    );
  });
});
