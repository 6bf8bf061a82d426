import type { Circuit, CompiledFeel, LoadPart } from '../circuit/circuit.ts';
import type { Solvers, Trial } from './key-down.ts';

/**
 * Which actors of a circuit (1 by actor) are not what they were in an earlier trial, or feel or change something that is
 * not; null where actors have other numbers than there, and nothing of it can serve.
 */
export function touchedActors(circuit: Circuit, solvers: Solvers, before: Trial): Uint8Array | null {
  if (circuit.actors.length !== before.circuit.actors.length) return null;
  const touched = new Uint8Array(circuit.actors.length);
  for (const { fragment, first } of circuit.placed.values()) {
    const there = before.circuit.placed.get(fragment.name);
    if (fragment.actors.length > 0 && there?.first.actor !== first.actor) return null;
    for (let i = 0; i < fragment.actors.length; i++) {
      const actor = first.actor + i;
      const isSame =
        there?.fragment === fragment &&
        // Something else than its fragment may have been put in its place: a failure.
        circuit.actors[actor]?.stuck === before.circuit.actors[actor]?.stuck &&
        sameObjects(shapeOf(circuit, solvers, actor), shapeOf(before.circuit, before.solvers, actor));
      touched[actor] = isSame ? 0 : 1;
    }
  }
  return touched;
}

/** All that an actor feels by and acts on. */
function shapeOf(circuit: Circuit, { dc, rf }: Solvers, actor: number): readonly unknown[] {
  return [
    ...(circuit.actors[actor]?.feels ?? []).flatMap((feel) => feltBy(circuit, { dc, rf }, feel)),
    ...dc.contentsOf(dc.blocksOf([actor])),
    ...rf.regionsWith([actor]).map((region) => rf.region(region)),
  ];
}

function feltBy(circuit: Circuit, { dc, rf }: Solvers, feel: CompiledFeel): readonly unknown[] {
  switch (feel.type) {
    case 'operator':
    case 'actor':
      return [];
    case 'voltageBelow':
    case 'voltageAbove':
      return dc.contentsBetween(feel.node, feel.reference);
    case 'currentAbove':
      return [dc.contentAt(feel.part)];
    case 'rfAbove':
      return [rf.regionAt(feel.port)];
    case 'powered':
      return feel.loads.flatMap((i) => {
        const load = circuit.parts[i] as LoadPart;
        return dc.contentsBetween(load.plus, load.minus);
      });
  }
}

const sameObjects = (some: readonly unknown[], others: readonly unknown[]): boolean =>
  some.length === others.length && some.every((one, i) => one === others[i]);
