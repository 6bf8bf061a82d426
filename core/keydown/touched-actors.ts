import type { Circuit } from '../circuit/circuit.ts';
import type { ActorWeb, Solvers, Trial } from './key-down.ts';

/**
 * Which actors of a circuit (1 by actor) are not what they were in an earlier trial, or feel or change something that is
 * not; null where actors have other numbers than there, and nothing of it can serve.
 */
export function touchedActors(circuit: Circuit, solvers: Solvers, web: ActorWeb, before: Trial): Uint8Array | null {
  if (circuit.actors.length !== before.circuit.actors.length) return null;
  const touched = new Uint8Array(circuit.actors.length);
  for (const { fragment, first } of circuit.placed.values()) {
    const there = before.circuit.placed.get(fragment.name);
    if (fragment.actors.length > 0 && there?.first.actor !== first.actor) return null;
    // Something else than its fragment may have been put in an actor's place: a failure.
    for (let i = first.actor; i < first.actor + fragment.actors.length; i++) {
      const isOther = there?.fragment !== fragment || circuit.actors[i]?.stuck !== before.circuit.actors[i]?.stuck;
      if (isOther || hasToDoWithOther(solvers, web, before, i)) touched[i] = 1;
    }
  }
  return touched;
}

function hasToDoWithOther({ dc, rf }: Solvers, web: ActorWeb, before: Trial, actor: number): boolean {
  const { solvers, web: webBefore } = before;
  const isOther = <T>(
    now: readonly number[] = [],
    then: readonly number[] = [],
    of: (n: number) => T,
    was: (n: number) => T,
  ) => now.length !== then.length || now.some((number, i) => of(number) !== was(then[i] as number));
  return (
    isOther(
      web.blocks[actor],
      webBefore.blocks[actor],
      (block) => dc.contentOf(block),
      (block) => solvers.dc.contentOf(block),
    ) ||
    isOther(
      web.regions[actor],
      webBefore.regions[actor],
      (region) => rf.region(region),
      (region) => solvers.rf.region(region),
    )
  );
}
