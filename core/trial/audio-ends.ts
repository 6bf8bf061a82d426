import type { Circuit, SignalEnd } from '../circuit/circuit.ts';
import { remember } from '../station/remember.ts';

/** An audio output or input with its number among its like. */
export interface NumberedEnd<T extends 'audioSource' | 'audioLoad'> {
  readonly index: number;
  readonly end: SignalEnd<T>;
}

export type AudioOutput = NumberedEnd<'audioSource'>;
export type AudioInput = NumberedEnd<'audioLoad'>;

export const outputsOfUnit = (circuit: Circuit, unit: string): readonly AudioOutput[] =>
  endsByUnit(circuit).outputs.get(unit) ?? [];

export const inputsOfUnit = (circuit: Circuit, unit: string): readonly AudioInput[] =>
  endsByUnit(circuit).inputs.get(unit) ?? [];

const endsByUnit = remember(({ signals }: Circuit) => ({
  outputs: byUnit(signals.sources),
  inputs: byUnit(signals.loads),
}));

function byUnit<T extends 'audioSource' | 'audioLoad'>(
  ends: readonly SignalEnd<T>[],
): ReadonlyMap<string, readonly NumberedEnd<T>[]> {
  const units = new Map<string, NumberedEnd<T>[]>();
  ends.forEach((end, index) => {
    const own = units.get(end.unit);
    if (own) own.push({ index, end });
    else units.set(end.unit, [{ index, end }]);
  });
  return units;
}
