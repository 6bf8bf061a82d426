import type { Circuit } from '../../../circuit/circuit.ts';
import type { DcSolution } from '../../../dc/dc-solution.ts';
import type { Conductors } from '../../../trial/metal/conductors.ts';

/** Less is no current, but what leaks. */
const leastAmps = 1e-6;

/**
 * The parts by which most of the current that leaves a node (`downstream`), or comes to it, gets to or from another one;
 * null where there is none, or where it goes to or comes from somewhere else. Along a current the voltage only falls, so
 * this ends.
 */
export function followCurrent(
  { parts }: Circuit,
  { at, joins }: Conductors,
  dc: DcSolution,
  from: number,
  to: number,
  downstream: boolean,
): number[] | null {
  const way: number[] = [];
  const seen = new Set([from]);
  for (let node = from; node !== to; ) {
    let next: { part: number; node: number; amps: number } | null = null;
    for (const [part, other] of at[node] ?? []) {
      const amps = joins(part) && !seen.has(other) ? leaving(parts[part], node, dc.ampsIn(part), downstream) : 0;
      if (amps > (next?.amps ?? leastAmps)) next = { part, node: other, amps };
    }
    if (!next) return null;
    way.push(next.part);
    seen.add(next.node);
    node = next.node;
  }
  return way;
}

/** Amperes of a part away from a node, or towards it. */
function leaving(part: Circuit['parts'][number] | undefined, node: number, amps: number, downstream: boolean): number {
  const near = part?.kind === 'diode' ? part.anode : part?.kind === 'resistor' ? part.a : node;
  return (near === node) === downstream ? amps : -amps;
}
