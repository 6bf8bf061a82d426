import { isOpenGate, type RfSource } from '../circuit/circuit.ts';
import type { KeyDown } from './key-down.ts';

/** What a source makes of a press: late after it, on for a while after the release. */
export interface RfOfDit {
  readonly lateMs: number;
  readonly tailMs: number;
  /** RF that comes out of a press as long as a dit; none if it starts after the dit is over. */
  readonly madeMs: number;
}

/** RF of one source from a dit, or null where the control does not make it send. */
export function rfOfDit(keyDown: KeyDown, source: RfSource, ditMs: number): RfOfDit | null {
  const { moments, releasedMs } = keyDown;
  const makes = (i: number) => isOpenGate(source.gate, moments[i]?.reach.on ?? new Uint8Array());
  const first = moments.findIndex((_, i) => makes(i));
  if (first < 0) return null;
  const off = moments.findIndex((m, i) => m.startMs >= releasedMs && !makes(i));
  const lateMs = moments[first]?.startMs ?? 0;
  const tailMs = (moments[off]?.startMs ?? keyDown.endMs) - releasedMs;
  return { lateMs, tailMs, madeMs: Math.max(0, ditMs - lateMs + tailMs) };
}
