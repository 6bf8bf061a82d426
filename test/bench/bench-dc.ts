import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { index, lusolve, type Matrix, matrix, slu, sparse } from 'mathjs';
import type { Circuit } from '../../core/circuit/circuit.ts';
import { DcSolver } from '../../core/dc/dc-solver.ts';
import { endsOf } from '../../core/dc/elimination-plan.ts';
import type { Islands } from '../../core/dc/islands.ts';
import { IslandFinder } from '../../core/dc/islands.ts';
import { writeSpice } from '../../core/dc/write-spice.ts';
import type { Reach } from '../../core/keydown/key-down.ts';
import { survey } from '../../core/survey.ts';
import { generateStation } from '../stations/generate.ts';
import { inMs, timed } from './timing.ts';

/** One network, the sending moment of all controls of a station of 63 units, by three ways in one run. */
export function benchDc() {
  const { trial } = survey(generateStation(60)).hookups[1] ?? {};
  const reach = trial?.keyDowns.at(-1)?.moments.find((m) => m.name === 'sending')?.reach;
  if (!trial || !reach) throw new Error('the generated station does not send');
  const { circuit } = trial;
  console.log(`\nDC of ${circuit.nodes.length} nodes and ${circuit.parts.length} parts, all transmitters sending`);
  const own = timed(
    60,
    () => circuit,
    (c) => new DcSolver(c).solve(reach.on).volts,
  );
  console.log(`this solver, nothing known yet    ${inMs(own)}`);
  againstMathjs(circuit, reach, own.median);
  againstNgspice(circuit, reach, own.median);
}

/** The same volts from mathjs's sparse LU of the conductance matrix, loads drawing what the solution says. */
function againstMathjs(circuit: Circuit, reach: Reach, own: number) {
  const islands = new IslandFinder(circuit).find(reach.on, new Set());
  const free = circuit.nodes.flatMap((_, node) => (islands.reference[node] === 1 ? [] : [node]));
  const { conductances, currents } = linearised(circuit, reach, islands, free);
  const solved = timed(
    5,
    () => conductances,
    (g) => lusolve(slu(g as never, 1, 0.001), currents as never),
  );
  const volts = lusolve(slu(conductances as never, 1, 0.001), currents as never) as unknown as Matrix;
  const off = free.map((node, i) => Math.abs(Number(volts.get([i, 0])) - (reach.dc.volts[node] as number)));
  const times = (solved.median / own).toFixed(0);
  console.log(
    `mathjs, sparse LU, already linear ${inMs(solved)}  ${times} times as long; differs by ${Math.max(...off).toExponential(1)} V at most`,
  );
}

function linearised(circuit: Circuit, reach: Reach, islands: Islands, free: readonly number[]) {
  const row = new Map(free.map((node, i) => [node, i]));
  const conductances = sparse();
  conductances.resize([free.length, free.length]);
  const currents = matrix(free.map(() => [0]));
  const add = (a: number, b: number, siemens: number) => {
    const [i, j] = [row.get(a), row.get(b)];
    if (i === undefined) return;
    conductances.set([i, i], Number(conductances.get([i, i])) + siemens);
    if (j !== undefined) conductances.set([i, j], Number(conductances.get([i, j])) - siemens);
  };
  const inject = (node: number, amps: number) => {
    const i = row.get(node);
    if (i !== undefined) currents.subset(index(i, 0), Number(currents.get([i, 0])) + amps);
  };
  circuit.parts.forEach((part, k) => {
    if (islands.inForce[k] === 0) return;
    const [a, b] = endsOf(part);
    if (a === b) return;
    if (part.kind === 'resistor') {
      add(a, b, 1 / part.ohms);
      add(b, a, 1 / part.ohms);
      return;
    }
    // Everything else as the current that it passes, with a leak that keeps lone nodes in place.
    const amps = (reach.dc.amps[k] as number) * (part.kind === 'supply' || part.kind === 'pullUp' ? -1 : 1);
    const siemens = part.kind === 'supply' ? 1 / Math.max(part.spec.sourceOhms, 1e-6) : 1e-9;
    const across = (reach.dc.volts[a] as number) - (reach.dc.volts[b] as number);
    add(a, b, siemens);
    add(b, a, siemens);
    inject(a, siemens * across - amps);
    inject(b, amps - siemens * across);
    if (part.kind !== 'pullUp' || part.fedFrom === null || islands.of[part.fedFrom] !== islands.of[a]) return;
    inject(part.fedFrom, amps);
    inject(b, -amps);
  });
  return { conductances, currents };
}

/** A run of ngspice on the same network, and what is left of it without the start of the program. */
function againstNgspice(circuit: Circuit, reach: Reach, own: number) {
  if (spawnSync('ngspice', ['--version']).status !== 0) {
    console.log('ngspice is not installed');
    return;
  }
  const folder = mkdtempSync(path.join(tmpdir(), 'deck-'));
  try {
    const write = (name: string, deck: string) => {
      const file = path.join(folder, name);
      writeFileSync(file, deck);
      return file;
    };
    const run = (file: string) => spawnSync('ngspice', ['-b', file]);
    const whole = timed(
      8,
      () => write('station.cir', writeSpice(circuit, 'bench', reach.on, new Set(), reach.dc)),
      run,
    );
    const empty = timed(8, () => write('empty.cir', '* empty\nr1 a 0 1\nv1 a 0 1\n.control\nop\n.endc\n.end\n'), run);
    console.log(`ngspice, a run                    ${inMs(whole)}  ${(whole.median / own).toFixed(0)} times as long`);
    const rest = whole.median - empty.median;
    console.log(
      `ngspice, less a run on one resistor  median ${rest.toFixed(2)} ms  ${(rest / own).toFixed(1)} times as long`,
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
