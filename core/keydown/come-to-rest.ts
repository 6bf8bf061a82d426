import type { Circuit } from '../circuit/circuit.ts';
import { Bench } from './bench.ts';
import type { Reach, Solvers } from './key-down.ts';

/** What a station is with nobody at a control, and the actors that never come to rest. */
export interface Rest {
  readonly reach: Reach;
  readonly restless: readonly number[];
}

/**
 * Lets a circuit come to rest with these parts open, each group of actors for itself: no other has anything to do with
 * what it does. Groups that are not in `groups` are as they were in `before`.
 */
export function comeToRest(
  circuit: Circuit,
  solvers: Solvers,
  open: ReadonlySet<number>,
  groups: readonly (readonly number[])[],
  before: Rest | null = null,
): Rest {
  const on = before ? before.reach.on.slice() : new Uint8Array(circuit.actors.length);
  const felt = before ? before.reach.felt.slice() : new Uint8Array(circuit.actors.length);
  for (const actor of groups.flat()) {
    on[actor] = 0;
    felt[actor] = 0;
  }
  const solved = (): Reach => ({ on, felt, dc: solvers.dc.solve(on, open), rf: solvers.rf.solve(on) });
  const start = solved();
  const own = new Set(groups.flat());
  const restless = (before?.restless ?? []).filter((actor) => !own.has(actor));
  const rests = groups.map((actors) => ({ actors, rest: new Bench(circuit, solvers, open, actors, start).rest() }));
  for (const { actors, rest } of rests) {
    restless.push(...rest.restless);
    for (const actor of actors) {
      on[actor] = rest.reach.on[actor] as number;
      felt[actor] = rest.reach.felt[actor] as number;
    }
  }
  return { reach: solved(), restless };
}
