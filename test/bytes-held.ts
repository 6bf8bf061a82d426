import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Takes the rubbish away at once; null where the runtime does not let itself be asked. */
const sweep = askable();

export const canSweep = sweep !== null;

/** Heap in bytes that goes with what `make` gives: what its making left elsewhere, as compiled code, is not counted. */
export function bytesHeld(make: () => unknown): number {
  const box: { held: unknown } = { held: make() };
  const before = swept();
  box.held = null;
  return before - swept();
}

function swept(): number {
  sweep?.();
  return process.memoryUsage().heapUsed;
}

function askable(): (() => void) | null {
  try {
    setFlagsFromString('--expose-gc');
    return runInNewContext('gc');
  } catch {
    return null;
  }
}
