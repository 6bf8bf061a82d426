import type { Circuit, SignalEnd } from '../circuit/circuit.ts';

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
