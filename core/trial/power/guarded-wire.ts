import { unfusedM } from '../../catalog/wire/fuses.ts';
import { fuseUpperAmps, type WireLimit, wireLimitAmps, wireName } from '../../catalog/wire/wire.ts';
import type { ActorStates, Circuit, CircuitPart, Origin, Resistor } from '../../circuit/circuit.ts';
import { findCable } from '../../station/parts.ts';
import { remember, rememberEach } from '../../station/remember.ts';
import type { Wire } from '../../station/schema/cable-kind.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { type Conductors, conductorsOf, joinedTo } from '../metal/conductors.ts';
import { listsOf } from '../parts.ts';
import { suppliesAmong } from './feeders.ts';

/** A conductor of a cable and the current up to which a fuse protects it. */
export interface LimitedWire {
  readonly cable: string;
  readonly number: string;
  readonly wire: string;
  readonly limitAmps: number;
  /** The table, and what was done with its figure. */
  readonly limitSource: string;
  /** The largest fuse that any published rule allows before it, not advice; null where none says. */
  readonly upper: WireLimit | null;
}

/** The thinnest wire behind a fuse (a part), up to the next fuse or load; null where none with a known limit is there. */
export function thinnestBehind(station: Station, circuit: Circuit, on: ActorStates, fuse: number): LimitedWire | null {
  const part = circuit.parts[fuse];
  if (part?.kind !== 'resistor') return null;
  const unfused = unfusedOf(circuit, on);
  const sides = [joinedTo(unfused, part.b), joinedTo(unfused, part.a)];
  const fed = sides.filter((side) => suppliesAmong(circuit, side).length === 0);
  // A fuse holder is declared from its source to what it feeds; between two sources it guards both ways.
  const behind = fed.length === 2 ? fed.slice(0, 1) : fed.length === 1 ? fed : sides;
  const own = 'cable' in part.origin ? part.origin.cable : null;
  const wires = behind.flatMap((side) => wiresAt(station, circuit, unfused, side, own));
  return thinnestOf(wires);
}

/** What joins contacts without a fuse. */
const unfusedOf = (circuit: Circuit, on: ActorStates): Conductors =>
  conductorsOf(circuit, on, (p) => p.fuse !== undefined || p.origin.type === 'chassis');

/** What hangs on a supply's plus with no fuse between. */
export interface Unfused {
  /** Each wire with the metres of wire from the supply to its far end, and whether every wire up to there is sheathed. */
  readonly wires: readonly (LimitedWire & { readonly farM: number; readonly sheathed: boolean })[];
  /** It ends at fuses only: no load is fed without one. */
  readonly fused: boolean;
}

export function unfusedFrom(station: Station, circuit: Circuit, on: ActorStates, plus: number): Unfused {
  const unfused = unfusedOf(circuit, on);
  const metres = metresFrom(circuit, unfused, plus);
  const found = partsAmong(circuit, unfused, metres).flatMap((part) => {
    if (part.origin.type !== 'wire') return [];
    const wire = limitOfWire(station, part.origin);
    // To the millimetre: a sum of decimal lengths is a hair off.
    const farM = Number(Math.max(metres.get(part.a) ?? 0, metres.get(part.b) ?? 0).toFixed(3));
    return wire ? [{ ...wire, farM }] : [];
  });
  const bareFromM = Math.min(...found.filter((w) => !findCable(station, w.cable)?.sheathed).map((w) => w.farM));
  const wires = found.map((wire) => ({ ...wire, sheathed: wire.farM < bareFromM }));
  const { loads, fuses } = nodesOf(circuit);
  const nodes = [...metres.keys()];
  return { wires, fused: nodes.some((node) => fuses.has(node)) && !nodes.some((node) => loads.has(node)) };
}

/** The nodes at which a load or a fuse ends. */
const nodesOf = remember((circuit: Circuit) => ({
  loads: new Set(listsOf(circuit).loads.flatMap(({ part }) => [part.plus, part.minus])),
  fuses: new Set(listsOf(circuit).fuses.flatMap(({ part }) => [part.a, part.b])),
}));

/** The conductors that join two of these nodes, in the circuit's order. */
function partsAmong(
  circuit: Circuit,
  { at, joins }: Conductors,
  nodes: ReadonlyMap<number, unknown> | ReadonlySet<number>,
): Resistor[] {
  const among = new Set(
    [...nodes.keys()].flatMap((node) =>
      (at[node] ?? []).flatMap(([part, other]) => (nodes.has(other) && joins(part) ? [part] : [])),
    ),
  );
  return [...among].sort((a, b) => a - b).map((part) => circuit.parts[part] as Resistor);
}

/** Metres of wire from a node to every one that metal joins to it. */
function metresFrom(circuit: Circuit, conductors: Conductors, start: number): Map<number, number> {
  conductors.from(start);
  const metres = new Map([[start, 0]]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const [part, other] of conductors.at[node] ?? []) {
      if (!conductors.joins(part)) continue;
      const there = (metres.get(node) ?? 0) + lengthOf(circuit.parts[part]);
      if (there >= (metres.get(other) ?? Number.POSITIVE_INFINITY)) continue;
      metres.set(other, there);
      open.push(other);
    }
  }
  return metres;
}

/** Metres of a piece of wire; everything else is short. */
const lengthOf = (part: CircuitPart | undefined): number => (part?.origin.type === 'wire' ? part.origin.lengthM : 0);

function wiresAt(
  station: Station,
  circuit: Circuit,
  conductors: Conductors,
  nodes: ReadonlySet<number>,
  own: string | null,
): LimitedWire[] {
  return partsAmong(circuit, conductors, nodes).flatMap((part) => {
    const { origin } = part;
    const wire = origin.type === 'wire' ? limitOfWire(station, origin) : null;
    // The end of a lead before its own fuse is as short as practice asks for.
    const hasFuse = wire !== null && wire.cable !== own && findCable(station, wire.cable)?.fuse !== undefined;
    const isStub = hasFuse && lengthOf(part) <= unfusedM;
    return wire && !isStub ? [wire] : [];
  });
}

function thinnestOf(wires: readonly LimitedWire[]): LimitedWire | null {
  return wires.reduce<LimitedWire | null>(
    (least, wire) => (least === null || wire.limitAmps < least.limitAmps ? wire : least),
    null,
  );
}

/** Which conductor of a cable is meant, as far as wire goes. */
type WireOf = Pick<Extract<Origin, { type: 'wire' }>, 'cable' | 'role'>;

/** What the wire tables say of a conductor of a cable; null where they say nothing. */
export function limitOfWire(station: Station, origin: WireOf): LimitedWire | null {
  const found = wireOf(station, origin);
  const limits = found && limitsOf(found.wire, station.settings);
  return limits && { cable: found.cable.id, number: found.cable.number, ...limits };
}

/** The same wire is in many cables. */
const limitsOf = rememberEach((wire: Wire, settings: Station['settings']) => {
  const limit = wireLimitAmps(wire, settings);
  if (!limit) return null;
  const upper = fuseUpperAmps(wire, settings);
  return { wire: wireName(wire), limitAmps: limit.amps, limitSource: limit.source, upper };
});

function wireOf(station: Station, origin: WireOf): { cable: Cable; wire: Wire } | null {
  const cable = findCable(station, origin.cable);
  const kind = cable && station.cableKinds[cable.kind];
  if (!cable || !kind) return null;
  return { cable, wire: origin.role === 'return' && kind.screen ? kind.screen : kind.core };
}
