import type { Circuit, CircuitActor, CircuitPart, Placed, RfEdge } from './circuit.ts';

/** Others in place of parts and actors (by their numbers), and of the RF edges of cables (by their ids). */
export interface Replacements {
  readonly parts: ReadonlyMap<number, CircuitPart>;
  readonly actors: ReadonlyMap<number, CircuitActor>;
  readonly edges: ReadonlyMap<string, (edge: RfEdge) => RfEdge>;
}

/** The circuit with others in their places: the fragments that they are in are others then, all else is the same. */
export function replaceIn(circuit: Circuit, { parts, actors, edges }: Replacements): Circuit {
  const placed = new Map<string, Placed>();
  for (const [name, there] of circuit.placed) {
    const own = replaced(there.parts, (_, i) => parts.get(there.first.part + i));
    const acting = replaced(there.actors, (_, i) => actors.get(there.first.actor + i));
    const change = name.startsWith('cable ') ? edges.get(name.slice('cable '.length)) : undefined;
    const rfEdges = replaced(there.rfEdges, (edge) => change?.(edge));
    const isSame = own === there.parts && acting === there.actors && rfEdges === there.rfEdges;
    placed.set(
      name,
      isSame ? there : { ...there, fragment: { ...there.fragment }, parts: own, actors: acting, rfEdges },
    );
  }
  const all = replaced(circuit.rf.edges, (edge) =>
    edge.origin.type === 'cable' ? edges.get(edge.origin.cable)?.(edge) : undefined,
  );
  return {
    ...circuit,
    placed,
    parts: replaced(circuit.parts, (_, i) => parts.get(i)),
    actors: replaced(circuit.actors, (_, i) => actors.get(i)),
    rf: all === circuit.rf.edges ? circuit.rf : { ...circuit.rf, edges: all },
  };
}

/** A list with others in place of some; itself where there are none. */
function replaced<T>(list: readonly T[], other: (item: T, i: number) => T | undefined): readonly T[] {
  let copy: T[] | null = null;
  for (let i = 0; i < list.length; i++) {
    const item = other(list[i] as T, i);
    if (item === undefined) continue;
    copy ??= list.slice();
    copy[i] = item;
  }
  return copy ?? list;
}
