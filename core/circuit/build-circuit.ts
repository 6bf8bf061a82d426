import { asDrawn, cablesIn } from '../station/parts.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import { type Circuit, emptyCircuit, type Fragment, never, type Placed } from './circuit.ts';
import { cableFragment, cableSource } from './fragments/cable-fragment.ts';
import { FragmentDraft } from './fragments/fragment-draft.ts';
import { unitFragment, unitSource } from './fragments/unit-fragment.ts';
import { Names } from './names.ts';
import { placeFragments } from './place-fragments.ts';
import { Reads } from './reads.ts';

/**
 * The station as it is plugged together in a hook-up: every contact a node, every conductor, joint, load and supply a
 * part between nodes, every actor with what it feels. The station has to be a valid one (`readStation`). What is the same
 * in one of the `known` circuits (of other hook-ups, of the station before an edit) is taken from there.
 */
export function buildCircuit(station: Station, hookup: Hookup = asDrawn, known: readonly Circuit[] = []): Circuit {
  const made = (name: string, from: readonly unknown[], make: () => Fragment): Fragment =>
    known.map((circuit) => circuit.placed.get(name)?.fragment).find((f) => f && isFrom(f, from)) ?? make();
  const fragments = [
    ...station.units.map((unit) => {
      const from = unitSource(station, hookup, unit);
      return made(`unit ${unit.id}`, from, () => unitFragment(station, hookup, unit, from));
    }),
    ...cablesIn(station, hookup).map((cable) => {
      const from = cableSource(station, cable);
      return made(`cable ${cable.id}`, from, () => cableFragment(station, cable, from));
    }),
    made('couplings', [station.couplings], () => couplingFragment(station.couplings)),
  ];
  const placed = placeFragments(
    fragments,
    known.map((circuit) => circuit.placed),
  );
  const [nearest] = known;
  if (nearest && nearest.rf.hertz === station.plan.frequencyHz && isSameList(placed, nearest.placed)) return nearest;
  return assemble(placed, station.plan.frequencyHz, nearest);
}

const isSameList = (some: ReadonlyMap<string, Placed>, others: ReadonlyMap<string, Placed>): boolean =>
  some.size === others.size && [...some].every(([name, placed]) => others.get(name) === placed);

const isFrom = (fragment: Fragment, from: readonly unknown[]): boolean =>
  fragment.from.every((source, i) => source === from[i]);

function assemble(placed: ReadonlyMap<string, Placed>, hertz: number, nearest: Circuit = emptyCircuit): Circuit {
  const gather = gatherer([...placed.values()], [...nearest.placed.values()]);
  const { rf, signals } = nearest;
  const actors = gather(nearest.actors, (p) => p.actors);
  return {
    placed,
    reads: new Reads(),
    nodes: gather(nearest.nodes, ({ fragment }) => fragment.nodes),
    nodeOf: { get: (name) => nodeOf(placed, name) },
    parts: gather(nearest.parts, (p) => p.parts),
    actors,
    actorOf: new Names(() => actors.map(({ key }) => key)),
    rf: {
      hertz,
      ports: gather(rf.ports, ({ fragment }) => fragment.rfPorts),
      edges: gather(rf.edges, (p) => p.rfEdges),
      sources: gather(rf.sources, (p) => p.rfSources),
      loads: gather(rf.loads, (p) => p.rfLoads),
    },
    signals: {
      sources: gather(signals.sources, (p) => p.sources),
      loads: gather(signals.loads, (p) => p.loads),
      data: gather(signals.data, (p) => p.data),
    },
  };
}

/** The number of `tx.power.plus` or `cable c1.a.plus`; ids may hold dots. */
function nodeOf(placed: ReadonlyMap<string, Placed>, name: string): number | undefined {
  for (let dot = name.indexOf('.'); dot >= 0; dot = name.indexOf('.', dot + 1)) {
    const owner = name.slice(0, dot);
    const there = placed.get(owner.startsWith('cable ') ? owner : `unit ${owner}`);
    const own = there?.fragment.nodeOf.get(name);
    if (there && own !== undefined) return there.first.node + own;
  }
  return undefined;
}

type ListOf<T> = (placed: Placed) => readonly T[];

/** As `flatMap`, in a third of the time: there are thousands. */
function inARow<T>(all: readonly Placed[], of: ListOf<T>): readonly T[] {
  const list: T[] = [];
  for (const placed of all) for (const one of of(placed)) list.push(one);
  return list;
}

/**
 * Puts the lists of all together, one after the other. Where only some are others than `before`, of which the whole list
 * is known, those are put into a copy of it, or nothing where they have none.
 */
function gatherer(
  all: readonly Placed[],
  before: readonly Placed[],
): <T>(known: readonly T[], of: ListOf<T>) => readonly T[] {
  const others = all.length === before.length ? all.flatMap((placed, i) => (placed === before[i] ? [] : [i])) : null;
  return (known, of) => {
    const lengthOf = (i: number) => of(all[i] as Placed).length;
    if (others?.every((i) => lengthOf(i) === of(before[i] as Placed).length) !== true) return inARow(all, of);
    const filled = others.filter((i) => lengthOf(i) > 0);
    if (filled.length === 0) return known;
    const list = known.slice();
    let [at, next] = [0, 0];
    for (const i of filled) {
      for (; next < i; next++) at += lengthOf(next);
      of(all[i] as Placed).forEach((one, k) => {
        list[at + k] = one;
      });
    }
    return list;
  };
}

/** What one antenna sends reaches another; nobody would call that a selected path. */
function couplingFragment(couplings: Station['couplings']): Fragment {
  const draft = new FragmentDraft('couplings', [couplings]);
  for (const { a, b, lossDb } of couplings ?? []) {
    const [from, to] = [a, b].map(({ unit, port }) => draft.rfPortElsewhere(unit, `${unit}.${port}`));
    if (from === undefined || to === undefined) continue;
    const ways = { lossDb, isolationDb: lossDb, oneWay: false, saturationDbm: null, maxWatts: null };
    draft.rfEdges.push({ a: from, b: to, ...ways, gate: never, origin: { type: 'coupling' } });
  }
  return draft;
}
