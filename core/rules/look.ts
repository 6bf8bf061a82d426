import type { Circuit, CircuitPart, LoadPart, Origin, Resistor, RfSource, SupplyPart } from '../circuit/circuit.ts';
import { isOpenGate } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { KeyDown, Reach } from '../keydown/key-down.ts';
import { cablesAt, findCable, hookupsOf, kindOf, portName, unitOf } from '../station/parts.ts';
import { remember } from '../station/remember.ts';
import type { Hookup, PortRef, Station, Unit } from '../station/schema/schema.ts';

/** A part of a circuit with its number. */
export interface Numbered<P extends CircuitPart> {
  readonly index: number;
  readonly part: P;
}

export type FusePart = Resistor & { readonly fuse: NonNullable<Resistor['fuse']> };

/** Sorted once for a circuit: every rule asks for the same parts again, moment by moment. */
const listsOf = remember((circuit: Circuit) => ({
  loads: partsOf(circuit, (p): p is LoadPart => p.kind === 'load'),
  supplies: partsOf(circuit, (p): p is SupplyPart => p.kind === 'supply'),
  fuses: partsOf(circuit, (p): p is FusePart => p.kind === 'resistor' && p.fuse !== undefined),
}));

function partsOf<P extends CircuitPart>(circuit: Circuit, is: (part: CircuitPart) => part is P): Numbered<P>[] {
  const found: Numbered<P>[] = [];
  circuit.parts.forEach((part, index) => {
    if (is(part)) found.push({ index, part });
  });
  return found;
}

export const loadsOf = (circuit: Circuit) => listsOf(circuit).loads;
export const suppliesOf = (circuit: Circuit) => listsOf(circuit).supplies;
export const fusesOf = (circuit: Circuit) => listsOf(circuit).fuses;

/** The unit that a part belongs to; a cable's parts belong to none. */
export const unitOfPart = (part: CircuitPart): string => ('unit' in part.origin ? part.origin.unit : '');

/** The port of a load or supply by its contact, `power` of `power.centre`. */
export const portOfRef = (ref: string): string => ref.split('.')[0] ?? ref;

/** The port that a contact is in; its unit alone for a joint inside the box. */
export const placeOfContact = (unit: string, ref: string): { readonly unit: string; readonly port?: string } =>
  ref.includes('.') ? { unit, port: portOfRef(ref) } : { unit };

/** Whether a load gets its current through one plug; a relay's coil may hang between the supply and a keyed line. */
export const isFeed = ({ spec }: LoadPart): boolean => portOfRef(spec.plus) === portOfRef(spec.minus);

/** Whether a load has enough to work with; one that a limiting supply holds just at its drop-out has not. */
export const works = (load: LoadPart, volts: number): boolean => volts >= load.dropOutV * (1 + 1e-5);

export const loadVolts = (reach: Reach, load: LoadPart): number => voltsBetween(reach.dc, load.plus, load.minus) ?? 0;

/** Whether a source makes RF at an instant. */
export const isSending = (source: RfSource, reach: Reach): boolean => isOpenGate(source.gate, reach.on);

/** A unit that is in use in another hook-up only is put aside in this one. */
export const isPutAside = (station: Station, hookup: Hookup, unit: string): boolean =>
  cablesAt(station, hookup, unit).length === 0 && hookupsOf(station).some((h) => cablesAt(station, h, unit).length > 0);

export const unitName = (station: Station, unit: string): string => unitOf(station, unit).name;

/**
 * Units that stand outdoors: those of which the user says so, those of such a kind, and what comes before an amplifier out
 * there, on its antenna's side. What is in the soil does not count: its wire stays where it is.
 */
export const outdoorUnits = remember((station: Station): ReadonlySet<string> => {
  const isSaidToBe = (unit: Unit) =>
    unit.outdoor ?? (kindOf(station, unit).outdoor && !kindOf(station, unit).electrode);
  const outdoors = new Set(station.units.filter(isSaidToBe).map(({ id }) => id));
  for (const unit of station.units.filter(({ id }) => outdoors.has(id))) {
    for (const element of kindOf(station, unit).elements) {
      if (element.type !== 'rfPath' || element.lossDb >= 0) continue;
      const before = (end: PortRef) => end.unit === unit.id && end.port === element.a;
      for (const { a, b } of station.cables) {
        if (before(a)) outdoors.add(b.unit);
        if (before(b)) outdoors.add(a.unit);
      }
    }
  }
  for (const { id, outdoor } of station.units) if (outdoor === false) outdoors.delete(id);
  return outdoors;
});

export const isOutdoor = (station: Station, unit: string): boolean => outdoorUnits(station).has(unit);

/** `Receiver · antenna` of an RF port's number. */
export function rfPortName(station: Station, circuit: Circuit, port: number): string {
  return portName(station, rfPortRef(circuit, port));
}

export function rfPortRef(circuit: Circuit, port: number): { unit: string; port: string } {
  const [unit = '', name = ''] = splitOnce(circuit.rf.ports[port] ?? '');
  return { unit, port: name };
}

/** Ids may hold dots, a port's name does not end before the last one. */
function splitOnce(name: string): [string, string] {
  const dot = name.lastIndexOf('.');
  return [name.slice(0, dot), name.slice(dot + 1)];
}

/** How a part is called when it is pointed at: `cable D4`, `fuse in D1`, `Fused strip`. */
export function nameOfOrigin(station: Station, origin: Origin): string {
  if (origin.type === 'element' || origin.type === 'chassis') return unitName(station, origin.unit);
  const number = findCable(station, origin.cable)?.number ?? origin.cable;
  return origin.type === 'cableFuse' ? `the fuse in ${number}` : number;
}

/** By what a part takes part in a finding. */
export function touchOf(origin: Origin): string {
  if (origin.type === 'element') return `part:${origin.unit}.${origin.element}`;
  if (origin.type === 'chassis') return `unit:${origin.unit}`;
  return `cable:${origin.cable}`;
}

/** Who is pressed in a key-down, for people: `Paddle`, `Paddle and Foot switch`. */
export function controlName(station: Station, circuit: Circuit, keyDown: KeyDown): string {
  const names = keyDown.controls.map((control) => unitName(station, circuit.actors[control]?.unit ?? ''));
  return names.length > 2 ? 'All controls' : names.join(' and ');
}

/** The same for programs: `paddle.levers`, `paddle.levers+switch.foot`. */
export const controlKey = (circuit: Circuit, keyDown: KeyDown): string =>
  keyDown.controls.map((control) => circuit.actors[control]?.key ?? '').join('+');
