import type { Circuit, CircuitPart, LoadPart, Resistor, RfSource, SupplyPart } from '../circuit/circuit.ts';
import { isOpenGate } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { Reach } from '../keydown/key-down.ts';
import { portOfRef } from '../station/parts.ts';
import { remember } from '../station/remember.ts';

/** A part of a circuit with its number. */
export interface Numbered<P extends CircuitPart> {
  readonly index: number;
  readonly part: P;
}

export type FusePart = Resistor & { readonly fuse: NonNullable<Resistor['fuse']> };

/** Sorted once for a circuit: every rule asks for the same parts again, moment by moment. */
export const listsOf = remember((circuit: Circuit) => ({
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

const listOf =
  <L extends 'loads' | 'supplies' | 'fuses'>(list: L) =>
  (circuit: Circuit): ReturnType<typeof listsOf>[L] => {
    circuit.reads.noteList(list);
    return listsOf(circuit)[list];
  };

export const loadsOf = listOf('loads');
export const suppliesOf = listOf('supplies');
export const fusesOf = listOf('fuses');

/** The unit that a part belongs to; a cable's parts belong to none. */
export const unitOfPart = (part: CircuitPart): string => ('unit' in part.origin ? part.origin.unit : '');

/** Whether a load gets its current through one plug; a relay's coil may hang between the supply and a keyed line. */
export const isFeed = ({ spec }: LoadPart): boolean => portOfRef(spec.plus) === portOfRef(spec.minus);

/** Whether a load has enough to work with; one that a limiting supply holds just at its drop-out has not. */
export const works = (load: LoadPart, volts: number): boolean => volts >= load.dropOutV * (1 + 1e-5);

export const loadVolts = (reach: Reach, load: LoadPart): number => voltsBetween(reach.dc, load.plus, load.minus) ?? 0;

/** Whether a source makes RF at an instant. */
export const isSending = (source: RfSource, reach: Reach): boolean => isOpenGate(source.gate, reach.on);
