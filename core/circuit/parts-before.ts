import type { Circuit, Placed } from './circuit.ts';

/**
 * For each part of a circuit its number in an earlier one; -1 where that has no such part. Parts are the same where they
 * come from the same fragment and neither circuit has put another one in its place.
 */
export function partsBefore(circuit: Circuit, earlier: Circuit): Int32Array {
  const before = new Int32Array(circuit.parts.length).fill(-1);
  for (const here of circuit.placed.values()) {
    const there = earlier.placed.get(here.fragment.name);
    if (there?.fragment !== here.fragment || there.first.actor !== here.first.actor) continue;
    for (let i = 0; i < here.parts.length; i++) {
      if (isWhole(circuit, here, i) && isWhole(earlier, there, i)) before[here.first.part + i] = there.first.part + i;
    }
  }
  return before;
}

const isWhole = ({ parts }: Circuit, placed: Placed, i: number): boolean =>
  parts[placed.first.part + i] === placed.parts[i];
