import type {
  Circuit,
  CircuitPart,
  LoadPart,
  Origin,
  Resistor,
  RfLoad,
  RfSource,
  SupplyPart,
} from '../circuit/circuit.ts';
import { isOpenGate } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { KeyDown, Moment, Reach, Trial } from '../keydown/key-down.ts';
import { cablesAt, findCable, hookupsOf, portName, unitOf } from '../station/parts.ts';
import type { Hookup, Station } from '../station/schema.ts';

/** A part of a circuit with its number. */
export interface Numbered<P extends CircuitPart> {
  readonly index: number;
  readonly part: P;
}

interface PartLists {
  readonly loads: readonly Numbered<LoadPart>[];
  readonly supplies: readonly Numbered<SupplyPart>[];
  readonly fuses: readonly Numbered<FusePart>[];
}

export type FusePart = Resistor & { readonly fuse: NonNullable<Resistor['fuse']> };

const known = new WeakMap<Circuit, PartLists>();

/** Sorted once for a circuit: every rule asks for the same parts again, moment by moment. */
function listsOf(circuit: Circuit): PartLists {
  const lists = known.get(circuit) ?? {
    loads: partsOf(circuit, (p): p is LoadPart => p.kind === 'load'),
    supplies: partsOf(circuit, (p): p is SupplyPart => p.kind === 'supply'),
    fuses: partsOf(circuit, (p): p is FusePart => p.kind === 'resistor' && p.fuse !== undefined),
  };
  known.set(circuit, lists);
  return lists;
}

function partsOf<P extends CircuitPart>(circuit: Circuit, is: (part: CircuitPart) => part is P): Numbered<P>[] {
  return circuit.parts.flatMap((part, index) => (is(part) ? [{ index, part }] : []));
}

export const loadsOf = (circuit: Circuit) => listsOf(circuit).loads;
export const suppliesOf = (circuit: Circuit) => listsOf(circuit).supplies;
export const fusesOf = (circuit: Circuit) => listsOf(circuit).fuses;

/** The unit that a part belongs to; a cable's parts belong to none. */
export const unitOfPart = (part: CircuitPart): string => ('unit' in part.origin ? part.origin.unit : '');

/** The port of a load or supply by its contact, `power` of `power.centre`. */
export const portOfRef = (ref: string): string => ref.split('.')[0] ?? ref;

/** In the order of time. */
export const momentNames = ['receive', 'going over', 'sending', 'going back'] as const satisfies Moment['name'][];

/** When something is so, as it stands in a sentence. */
export const momentWords: Record<Moment['name'], string> = {
  receive: 'in receive',
  'going over': 'while going over',
  sending: 'in sending',
  'going back': 'while going back',
};

/** A moment of a trial: its name for a finding, what the station looks like, and the key-down it belongs to. */
export interface Instant {
  readonly name: Moment['name'];
  readonly reach: Reach;
  readonly keyDown: KeyDown | null;
}

/** Receive, and every moment of every key-down: the settled ones first, so that of two alike they are told. */
export function instantsOf(trial: Trial): Instant[] {
  const passing = trial.keyDowns.flatMap((keyDown) =>
    keyDown.moments
      .slice(1, -1)
      .filter((m) => m.name !== 'sending')
      .map((m) => ({ name: m.name, reach: m.reach, keyDown })),
  );
  return [{ name: 'receive', reach: trial.receive, keyDown: null }, ...sendingsOf(trial), ...passing];
}

/** The settled moment of each key-down with the control held. */
export function sendingsOf(trial: Trial): Instant[] {
  return trial.keyDowns.flatMap((keyDown) =>
    keyDown.moments.filter((m) => m.name === 'sending').map((m) => ({ name: m.name, reach: m.reach, keyDown })),
  );
}

export const loadVolts = (reach: Reach, load: LoadPart): number => voltsBetween(reach.dc, load.plus, load.minus) ?? 0;

export const sourcesOf = (trial: Trial): readonly RfSource[] => trial.circuit.rf.sources;
export const receiversOf = (trial: Trial): readonly RfLoad[] =>
  trial.circuit.rf.loads.filter((l) => l.spec.role === 'receiver');

/** Whether a source makes RF at an instant. */
export const isSending = (source: RfSource, reach: Reach): boolean => isOpenGate(source.gate, reach.on);

/** A unit that is in use in another hook-up only is put aside in this one. */
export const isPutAside = (station: Station, hookup: Hookup, unit: string): boolean =>
  cablesAt(station, hookup, unit).length === 0 && hookupsOf(station).some((h) => cablesAt(station, h, unit).length > 0);

export const unitName = (station: Station, unit: string): string => unitOf(station, unit).name;

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
