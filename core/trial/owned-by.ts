import type { Circuit, CircuitActor, RfEdge, RfLoad, RfSource } from '../circuit/circuit.ts';
import { remember } from '../station/remember.ts';

/** What of a circuit is in one unit's box, its parts apart. */
export interface Owned {
  readonly actors: readonly CircuitActor[];
  readonly rfSources: readonly RfSource[];
  readonly rfLoads: readonly RfLoad[];
  readonly rfEdges: readonly RfEdge[];
}

const nothing: Owned = { actors: [], rfSources: [], rfLoads: [], rfEdges: [] };

/** What a unit owns in a circuit, in the circuit's order. */
export const ownedBy = (circuit: Circuit, unit: string): Owned => byUnit(circuit).get(unit) ?? nothing;

type Lists = { readonly [K in keyof Owned]: Owned[K][number][] };

const byUnit = remember(({ actors, rf }: Circuit): ReadonlyMap<string, Owned> => {
  const units = new Map<string, Lists>();
  const of = (unit: string): Lists => {
    const known = units.get(unit);
    if (known) return known;
    const lists = { actors: [], rfSources: [], rfLoads: [], rfEdges: [] };
    units.set(unit, lists);
    return lists;
  };
  for (const actor of actors) of(actor.unit).actors.push(actor);
  for (const source of rf.sources) of(source.unit).rfSources.push(source);
  for (const load of rf.loads) of(load.unit).rfLoads.push(load);
  for (const edge of rf.edges) if (edge.origin.type === 'element') of(edge.origin.unit).rfEdges.push(edge);
  return units;
});
