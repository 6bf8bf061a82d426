import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import type { Circuit } from '../../core/circuit/circuit.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';
import { hookupsOf } from '../../core/station/parts.ts';
import { anyStation } from '../stations/random-station.ts';

/** The circuit with one source of 0 dBm at a port, and no way that is one-way or amplifies. */
function passive(circuit: Circuit, port: number): Circuit {
  const edges = circuit.rf.edges.filter((e) => !e.oneWay && e.lossDb >= 0 && e.saturationDbm === null);
  const spec = { id: 'test', type: 'rfSource', port: 'test', dbm: 0 } as const;
  return { ...circuit, rf: { ...circuit.rf, edges, sources: [{ port, unit: 'test', gate: [], spec }] } };
}

describe('passive RF ways, on stations drawn at random', () => {
  it('lose as much in one direction as in the other (reciprocity)', () => {
    const made = fc.record({ station: anyStation, from: fc.nat(), to: fc.nat(), on: fc.array(fc.boolean()) });
    let reached = 0;
    fc.assert(
      fc.property(made, ({ station, from, to, on }) => {
        for (const hookup of hookupsOf(station)) {
          const circuit = buildCircuit(station, hookup);
          const size = circuit.rf.ports.length;
          if (size === 0) continue;
          const states = Uint8Array.from(circuit.actors, (_, i) => (on[i] ? 1 : 0));
          const level = (source: number, port: number) =>
            new RfSolver(passive(circuit, source)).solve(states).levelAt(port)?.dbm;
          const [a, b] = [from % size, to % size];
          const [there, back] = [level(a, b), level(b, a)];
          if (there === undefined) expect(back).toBeUndefined();
          else {
            reached++;
            expect(back).toBeCloseTo(there, 9);
          }
        }
      }),
      { numRuns: 300 },
    );
    expect(reached).toBeGreaterThan(50);
  });
});
