import { describe, expect, it } from 'vitest';
import { DcSolver } from '../../core/dc/dc-solver.ts';
import { writeSpice } from '../../core/dc/write-spice.ts';
import { addGenerated, shapeOf } from './generated-network.ts';
import { goldenVolts } from './golden-volts.ts';
import { Network } from './network.ts';
import { needsNgspice, runNgspice } from './run-ngspice.ts';

const none = new Uint8Array(0);
/** Networks that share a deck, side by side: the start of the program costs more than a network. */
const batch = 9;

/** The networks of some seeds in one, their volts, and the deck that says the same. */
function together(seeds: readonly number[]) {
  const n = new Network();
  for (const seed of seeds) addGenerated(n, seed);
  const circuit = n.circuit();
  const dc = new DcSolver(circuit).solve(none);
  return { circuit, dc, deck: () => writeSpice(circuit, `seeds ${seeds[0]} on`, none, new Set(), dc) };
}

/** A millivolt is the floor: below it the deck's printed digits and the solver's tolerances are what is compared. */
const isClose = (ours: number, theirs: number): boolean =>
  Math.abs(ours - theirs) <= 1e-6 * Math.max(Math.abs(theirs), 1e-3);

const starts = Array.from({ length: 25 }, (_, i) => i * batch);
const seedsFrom = (start: number) => Array.from({ length: batch }, (_, i) => start + i);

/** Ours and ngspice's volts of every node, by name. Now and then it finds no balance for all at once, but for each alone. */
function bothOf(seeds: readonly number[]): [string, number, number][] {
  const { circuit, dc, deck } = together(seeds);
  const solved = runNgspice(deck());
  if (solved.size === 0 && seeds.length > 1) return seeds.flatMap((seed) => bothOf([seed]));
  expect(dc.settled).toBe(true);
  return [...solved].map(([node, volts]) => [circuit.nodes[node] ?? '', dc.volts[node] as number, volts]);
}

// Skipped where ngspice isn't installed; `npm test` installs it where apt is there.
describe(`${starts.length * batch} generated networks, solved by ngspice`, needsNgspice, () => {
  it.each(starts)('seeds from %d on: every node to 1e-6', (start) => {
    const both = bothOf(seedsFrom(start));
    expect(new Set(both.map(([name]) => name.split(':')[0])).size).toBe(batch);
    for (const [name, ours, theirs] of both)
      expect(isClose(ours, theirs), `${name}, ${shapeOf(Number.parseInt(name, 10))}: ${ours} for ${theirs}`).toBe(true);
  });
});

describe('generated networks, against what ngspice printed', () => {
  it.each(Object.entries(goldenVolts))('seed %s', (seed, nodes) => {
    const { circuit, dc } = together([Number(seed)]);
    const names = Object.entries(nodes);
    expect(names.length).toBeGreaterThan(2);
    for (const [name, volts] of names) {
      const ours = dc.volts[circuit.nodes.indexOf(`${seed}:${name}`)] as number;
      expect(isClose(ours, volts), `${name}: ${ours} for ${volts}`).toBe(true);
    }
  });
});
