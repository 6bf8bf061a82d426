import type { CompiledFeel, Elsewhere, Fragment, Gate, Numbers, Placed, SignalEnd } from './circuit.ts';
import { renumberPart } from './renumber-part.ts';

/**
 * Fragments one after the other in the numbers of one circuit. Those that stand in `known` circuits with the same numbers
 * are taken from there. Throws where a fragment names what no other has.
 */
export function placeFragments(
  fragments: readonly Fragment[],
  known: readonly ReadonlyMap<string, Placed>[],
): ReadonlyMap<string, Placed> {
  const placed = new Map<string, Placed>();
  /** By known circuit the fragments so far that are not as they are there. */
  const others = known.map(() => new Set<string>());
  let first: Numbers = { node: 0, part: 0, actor: 0, rfPort: 0 };
  for (const fragment of fragments) {
    const there = known.map((circuit) => circuit.get(fragment.name));
    const isThere = (p: Placed | undefined, k: number) =>
      p !== undefined && p.fragment === fragment && isSameNumbers(p.first, first) && !namesAny(fragment, others[k]);
    const here = there.find(isThere) ?? placeAnew(fragment, first, placed);
    there.forEach((p, k) => {
      if (p !== here) others[k]?.add(fragment.name);
    });
    placed.set(fragment.name, here);
    first = {
      node: first.node + fragment.nodes.length,
      part: first.part + fragment.parts.length,
      actor: first.actor + fragment.actors.length,
      rfPort: first.rfPort + fragment.rfPorts.length,
    };
  }
  return placed;
}

const isSameNumbers = (a: Numbers, b: Numbers): boolean =>
  a.node === b.node && a.part === b.part && a.actor === b.actor && a.rfPort === b.rfPort;

/** Whether a fragment names contacts or ports of any of these. */
const namesAny = ({ nodesElsewhere, portsElsewhere }: Fragment, names: ReadonlySet<string> | undefined): boolean =>
  names !== undefined &&
  names.size > 0 &&
  [...nodesElsewhere, ...portsElsewhere].some(({ unit }) => names.has(`unit ${unit}`));

function placeAnew(fragment: Fragment, first: Numbers, placed: ReadonlyMap<string, Placed>): Placed {
  const nodesElsewhere = fragment.nodesElsewhere.map((at) => numberOf(placed, at, 'nodeOf', 'node'));
  const portsElsewhere = fragment.portsElsewhere.map((at) => numberOf(placed, at, 'rfPortOf', 'rfPort'));
  return renumber({ fragment, first, nodesElsewhere, portsElsewhere });
}

type Unplaced = Pick<Placed, 'fragment' | 'first' | 'nodesElsewhere' | 'portsElsewhere'>;

function numberOf(
  placed: ReadonlyMap<string, Placed>,
  { unit, name }: Elsewhere,
  numbers: 'nodeOf' | 'rfPortOf',
  of: 'node' | 'rfPort',
): number {
  const owner = placed.get(`unit ${unit}`);
  const own = owner?.fragment[numbers].get(name);
  if (owner === undefined || own === undefined) throw new Error(`no ${of} ${name}`);
  return owner.first[of] + own;
}

function renumber({ fragment, first, nodesElsewhere, portsElsewhere }: Unplaced): Placed {
  const node = (own: number) => (own < 0 ? (nodesElsewhere[-own - 1] as number) : own + first.node);
  const port = (own: number) => (own < 0 ? (portsElsewhere[-own - 1] as number) : own + first.rfPort);
  const actor = (own: number) => (own < 0 ? own : own + first.actor);
  const gate = (own: Gate): Gate =>
    own.length === 0 || first.actor === 0 ? own : own.map((held) => ({ ...held, actor: actor(held.actor) }));
  const signal = <T extends 'audioSource' | 'audioLoad' | 'dataEnd'>(end: SignalEnd<T>): SignalEnd<T> => ({
    ...end,
    node: node(end.node),
    reference: node(end.reference),
    gate: gate(end.gate),
  });
  const feel = (own: CompiledFeel): CompiledFeel => {
    switch (own.type) {
      case 'operator':
        return own;
      case 'voltageBelow':
      case 'voltageAbove':
        return { ...own, node: node(own.node), reference: node(own.reference) };
      case 'currentAbove':
        return { ...own, part: own.part < 0 ? own.part : own.part + first.part };
      case 'rfAbove':
        return { ...own, port: port(own.port) };
      case 'actor':
        return { ...own, actor: actor(own.actor) };
      case 'powered':
        return { ...own, loads: own.loads.map((load) => load + first.part) };
    }
  };
  return {
    fragment,
    first,
    nodesElsewhere,
    portsElsewhere,
    parts: fragment.parts.map((part) => renumberPart(part, node, gate)),
    actors: fragment.actors.map((own) => ({
      ...own,
      feels: own.feels.map(feel),
      power: own.power === null ? null : actor(own.power),
    })),
    rfEdges: fragment.rfEdges.map((edge) => ({ ...edge, a: port(edge.a), b: port(edge.b), gate: gate(edge.gate) })),
    rfSources: fragment.rfSources.map((source) => ({ ...source, port: port(source.port), gate: gate(source.gate) })),
    rfLoads: fragment.rfLoads.map((load) => ({ ...load, port: port(load.port), gate: gate(load.gate) })),
    sources: fragment.sources.map(signal),
    loads: fragment.loads.map(signal),
    data: fragment.data.map(signal),
  };
}
