import { wireLimitAmps, wireName } from '../../catalog/wire.ts';
import type { ActorStates, Circuit, Origin } from '../../circuit/circuit.ts';
import type { Station } from '../../station/schema.ts';
import { suppliesOf } from '../look.ts';
import { conductorsOf, joinedTo } from '../trace.ts';

/** A conductor of a cable and the current up to which a fuse protects it. */
export interface LimitedWire {
  readonly cable: string;
  readonly number: string;
  readonly wire: string;
  readonly limitAmps: number;
  readonly source: string;
}

/** The thinnest wire behind a fuse (a part), up to the next fuse or load; null where none with a known limit is there. */
export function thinnestBehind(station: Station, circuit: Circuit, on: ActorStates, fuse: number): LimitedWire | null {
  const part = circuit.parts[fuse];
  if (part?.kind !== 'resistor') return null;
  const unfused = conductorsOf(circuit, on, (p) => p.fuse !== undefined || p.origin.type === 'chassis');
  const plus = suppliesOf(circuit).map((s) => s.part.plus);
  const sideA = joinedTo(unfused, part.a);
  // A fuse holder is declared from its source to what it feeds; where end b is at a supply it was declared the other way.
  const behind = plus.some((node) => joinedTo(unfused, part.b).has(node)) ? sideA : joinedTo(unfused, part.b);
  return thinnestOf(wiresAt(station, circuit, behind));
}

/** Wires that a supply (a part) could feed with no fuse between. */
export function unfusedWires(station: Station, circuit: Circuit, on: ActorStates, plus: number): LimitedWire[] {
  return wiresAt(
    station,
    circuit,
    joinedTo(
      conductorsOf(circuit, on, (p) => p.fuse !== undefined || p.origin.type === 'chassis'),
      plus,
    ),
  );
}

function wiresAt(station: Station, circuit: Circuit, nodes: ReadonlySet<number>): LimitedWire[] {
  return circuit.parts.flatMap((part) => {
    if (part.kind !== 'resistor' || part.origin.type !== 'wire' || !nodes.has(part.a) || !nodes.has(part.b)) return [];
    const wire = limitOfWire(station, part.origin);
    return wire ? [wire] : [];
  });
}

function thinnestOf(wires: readonly LimitedWire[]): LimitedWire | null {
  return wires.reduce<LimitedWire | null>(
    (least, wire) => (least === null || wire.limitAmps < least.limitAmps ? wire : least),
    null,
  );
}

/** What the wire tables say of a conductor of a cable; null where they say nothing. */
export function limitOfWire(station: Station, origin: Extract<Origin, { type: 'wire' }>): LimitedWire | null {
  const cable = station.cables.find((c) => c.id === origin.cable);
  const kind = cable && station.cableKinds[cable.kind];
  if (!cable || !kind) return null;
  const wire = origin.role === 'return' && kind.screen ? kind.screen : kind.core;
  const limit = wireLimitAmps(wire);
  return (
    limit && {
      cable: cable.id,
      number: cable.number,
      wire: wireName(wire),
      limitAmps: limit.amps,
      source: limit.source,
    }
  );
}
