import type { RfLoad } from '../../circuit/circuit.ts';
import type { KeyDown, Reach, Trial } from '../../keydown/key-down.ts';
import { remember } from '../../station/remember.ts';
import { assumedOverloadDbm, audibleDb, isMuted } from './rf-ways.ts';

/** The shortest pause in which a receiver that a press makes deaf is heard again. */
export type Pause = 'dit' | 'letter' | 'word' | 'none';

/** Pauses in dits (ITU-R M.1677-1), the shortest first. */
export const pauses = [
  ['dit', 1],
  ['letter', 3],
  ['word', 7],
] as const;

/** What one receiver hears of a press. */
export interface Listening {
  readonly receiver: RfLoad;
  /** From the press until it no longer hears its antenna. */
  readonly deafMs: number;
  /** From the release until it hears it again. */
  readonly againMs: number;
  readonly pause: Pause;
  /** How long, and how strongly, the station's own RF comes to it while it is not muted; null where it does not. */
  readonly unmuted: { readonly ms: number; readonly dbm: number } | null;
}

/** The receivers that a press makes deaf: when they hear their antenna again, against the pauses at the length of a dit. */
export function listeningIn(trial: Trial, keyDown: KeyDown, ditMs: number): Listening[] {
  trial.circuit.reads.noteList('receivers');
  const { moments, releasedMs } = keyDown;
  return openAtRest(trial).flatMap((receiver): Listening[] => {
    if (!canMakeDeaf(trial, keyDown, receiver)) return [];
    const deaf = moments.find((m) => !hears(trial, m.reach, receiver));
    if (!deaf) return [];
    const lastDeaf = moments.findLastIndex((m) => !hears(trial, m.reach, receiver));
    const againMs = Math.max(0, (moments[lastDeaf + 1]?.startMs ?? keyDown.endMs) - releasedMs);
    const pause = pauses.find(([, dits]) => againMs < dits * ditMs)?.[0] ?? 'none';
    return [{ receiver, deafMs: deaf.startMs, againMs, pause, unmuted: unmutedRf(trial, keyDown, receiver) }];
  });
}

/** Whether a press changes anything about a receiver's mute or on the ways to it. */
function canMakeDeaf(trial: Trial, { moments }: KeyDown, receiver: RfLoad): boolean {
  const region = trial.solvers.rf.numberAt(receiver.port);
  const isMutedAtRest = isMuted(trial, trial.receive, receiver.unit);
  return moments.some(
    ({ reach }) => reach.rf.changed.has(region) || isMuted(trial, reach, receiver.unit) !== isMutedAtRest,
  );
}

/** The receivers that hear their antenna with nobody at any control. */
const openAtRest = remember((trial: Trial): readonly RfLoad[] =>
  trial.circuit.rf.loads.filter((load) => load.spec.role === 'receiver' && hears(trial, trial.receive, load)),
);

/** Whether a receiver is open and hangs on an antenna by selected paths. */
function hears(trial: Trial, reach: Reach, receiver: RfLoad): boolean {
  if (isMuted(trial, reach, receiver.unit)) return false;
  const group = reach.rf.groupOf(receiver.port);
  const region = reach.rf.regionOf(receiver.port);
  return (antennasIn(trial).get(region) ?? []).some((l) => reach.rf.groupOf(l.port) === group);
}

/** Antennas by region. */
const antennasIn = remember(({ circuit, receive }: Trial): ReadonlyMap<number, readonly RfLoad[]> => {
  const antennas = new Map<number, RfLoad[]>();
  for (const load of circuit.rf.loads) {
    if (load.spec.role !== 'antenna') continue;
    const region = receive.rf.regionOf(load.port);
    antennas.set(region, [...(antennas.get(region) ?? []), load]);
  }
  return antennas;
});

function unmutedRf(trial: Trial, keyDown: KeyDown, receiver: RfLoad): Listening['unmuted'] {
  const least = (receiver.spec.overloadDbm ?? assumedOverloadDbm) - audibleDb;
  let [ms, dbm] = [0, Number.NEGATIVE_INFINITY];
  keyDown.moments.forEach(({ startMs, reach }, i) => {
    const level = reach.rf.levelAt(receiver.port);
    if (!level || level.dbm < least || isMuted(trial, reach, receiver.unit)) return;
    ms += (keyDown.moments[i + 1]?.startMs ?? keyDown.endMs) - startMs;
    dbm = Math.max(dbm, level.dbm);
  });
  return ms > 0 ? { ms, dbm } : null;
}
