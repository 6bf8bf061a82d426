import type { Circuit, SignalEnd } from '../circuit/circuit.ts';
import { metalGroups } from '../circuit/metal-groups.ts';

/** An audio output or input with its number among its like. */
export interface NumberedEnd<T extends 'audioSource' | 'audioLoad'> {
  readonly index: number;
  readonly end: SignalEnd<T>;
}

export type AudioOutput = NumberedEnd<'audioSource'>;
export type AudioInput = NumberedEnd<'audioLoad'>;

export const outputsOfUnit = ({ signals }: Circuit, unit: string): AudioOutput[] => endsOf(signals.sources, unit);
export const inputsOfUnit = ({ signals }: Circuit, unit: string): AudioInput[] => endsOf(signals.loads, unit);

const endsOf = <T extends 'audioSource' | 'audioLoad'>(all: readonly SignalEnd<T>[], unit: string): NumberedEnd<T>[] =>
  all.flatMap((end, index) => (end.unit === unit ? [{ index, end }] : []));

/** The outputs that metal joins to a node whatever any actor does, by name. */
export function outputsJoinedTo(circuit: Circuit, node: number): SignalEnd<'audioSource'>[] {
  const groupOf = metalGroups(circuit);
  return circuit.signals.sources
    .filter((source) => groupOf(source.node) === groupOf(node))
    .sort((a, b) => nameOf(a).localeCompare(nameOf(b)));
}

const nameOf = ({ unit, spec }: SignalEnd<'audioSource'>): string => `${unit} ${spec.contact}`;
