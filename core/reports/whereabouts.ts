import type { Circuit, Resistor, RfSource, SupplyPart } from '../circuit/circuit.ts';
import type { DcSolution } from '../dc/dc-solution.ts';
import type { Trial } from '../keydown/key-down.ts';
import { remember, rememberEach } from '../station/remember.ts';
import type { Cable, Station, Unit } from '../station/schema/schema.ts';
import type { Port } from '../station/schema/unit-kind.ts';

/** A conductor of a cable: its part, and what it is for. */
export interface WirePart {
  readonly index: number;
  readonly part: Resistor;
  readonly row: number;
  readonly role: 'live' | 'second' | 'return';
}

/** By cable, its conductors in the order of its wiring; the pieces of a fused core follow on one another. */
const wiresByCable = remember((circuit: Circuit): ReadonlyMap<string, readonly WirePart[]> => {
  const wires = new Map<string, WirePart[]>();
  circuit.parts.forEach((part, index) => {
    if (part.kind !== 'resistor' || part.origin.type !== 'wire') return;
    const { cable, row, role } = part.origin;
    const list = wires.get(cable);
    const wire = { index, part, row, role };
    if (list) list.push(wire);
    else wires.set(cable, [wire]);
  });
  return wires;
});

export const wiresOf = (circuit: Circuit, cable: string): readonly WirePart[] => wiresByCable(circuit).get(cable) ?? [];

/** Where something is in the circuit, and on which blocks and RF regions what is read there depends. */
interface Whereabouts {
  readonly blocks: readonly number[];
  readonly regions: readonly number[];
}

export interface CableWhereabouts extends Whereabouts {
  readonly wires: readonly WirePart[];
  readonly rfPorts: readonly [number, number];
}

export interface PortWhereabouts extends Whereabouts {
  /** The nodes of its live contact and its return, where it has them. */
  readonly live: number | undefined;
  readonly back: number | undefined;
  /** The parts that join its live contact to what is plugged in. */
  readonly joints: readonly number[];
  readonly rfPort: number;
}

export interface UnitWhereabouts extends Whereabouts {
  readonly actors: readonly number[];
  readonly sources: readonly RfSource[];
  /** Most have none or one; a computer has one at each outlet. */
  readonly supplies: readonly { readonly index: number; readonly part: SupplyPart }[];
}

const rfPorts = remember((circuit: Circuit) => new Map(circuit.rf.ports.map((name, port) => [name, port])));

const jointsAt = remember((circuit: Circuit) => {
  const joints = new Map<number, number[]>();
  circuit.parts.forEach((part, i) => {
    if (part.kind === 'resistor' && part.origin.type === 'mate') joints.set(part.b, [...(joints.get(part.b) ?? []), i]);
  });
  return joints;
});

const byUnit = remember(({ circuit }: Trial) => {
  const actors = new Map<string, number[]>();
  circuit.actors.forEach(({ unit }, i) => {
    actors.set(unit, [...(actors.get(unit) ?? []), i]);
  });
  const supplies = new Map<string, { index: number; part: SupplyPart }[]>();
  circuit.parts.forEach((part, index) => {
    if (part.kind !== 'supply' || part.origin.type !== 'element') return;
    supplies.set(part.origin.unit, [...(supplies.get(part.origin.unit) ?? []), { index, part }]);
  });
  const sources = new Map<string, RfSource[]>();
  for (const source of circuit.rf.sources) sources.set(source.unit, [...(sources.get(source.unit) ?? []), source]);
  return { actors, supplies, sources };
});

export const cableWhereabouts = rememberEach((trial: Trial, { id, a, b }: Cable): CableWhereabouts => {
  const { circuit, receive } = trial;
  const wires = wiresOf(circuit, id);
  const live = wires.find((w) => w.role === 'live')?.part.a;
  const back = wires.find((w) => w.role === 'return')?.part.a;
  const [near = -1, far = -1] = [a, b].map((end) => rfPorts(circuit).get(`${end.unit}.${end.port}`) ?? -1);
  const regions = near < 0 || far < 0 ? [] : [receive.rf.regionOf(near), receive.rf.regionOf(far)];
  const blocks = [...wires.map((w) => receive.dc.blockOf(w.index)), ...between(receive.dc, live, back)];
  return { wires, rfPorts: [near, far], regions, blocks };
});

export function portWhereabouts(station: Station, trial: Trial, unit: Unit, port: Port): PortWhereabouts {
  const { circuit, receive } = trial;
  const key = `${unit.id}.${port.id}`;
  const contacts = station.connectors[port.connector]?.contacts ?? [];
  const node = (role: string) => circuit.nodeOf.get(`${key}.${contacts.find((c) => c.role === role)?.id}`);
  const [live, back] = [node('live'), node('return')];
  const joints = live === undefined ? [] : (jointsAt(circuit).get(live) ?? []);
  const rfPort = rfPorts(circuit).get(key) ?? -1;
  const blocks = [...joints.map((i) => receive.dc.blockOf(i)), ...between(receive.dc, live, back)];
  return { live, back, joints, rfPort, blocks, regions: rfPort < 0 ? [] : [receive.rf.regionOf(rfPort)] };
}

export function unitWhereabouts(trial: Trial, unit: string): UnitWhereabouts {
  const { actors, supplies, sources } = byUnit(trial);
  const own = supplies.get(unit) ?? [];
  const blocks = own.map(({ index }) => trial.receive.dc.blockOf(index));
  return { actors: actors.get(unit) ?? [], sources: sources.get(unit) ?? [], supplies: own, blocks, regions: [] };
}

const between = (dc: DcSolution, a: number | undefined, b: number | undefined): readonly number[] =>
  a === undefined || b === undefined ? [] : dc.blocksBetween(a, b);
