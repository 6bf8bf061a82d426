import type { KeyDown, Reach, Trial } from './key-down.ts';
import { hasNumbersOf } from './weave-actors.ts';

/** What an earlier press of a group of actors is in another trial, in which all that it touches is the same. */
export function pressAgain(
  keyDown: KeyDown,
  actors: readonly number[],
  before: Trial,
  now: Pick<Trial, 'receive' | 'solvers'>,
): KeyDown {
  return {
    ...keyDown,
    moments: keyDown.moments.map((m) => ({ ...m, reach: reachAgain(m.reach, actors, before, now) })),
  };
}

function reachAgain(
  { on: onThen, felt: feltThen, dc, rf }: Reach,
  actors: readonly number[],
  { solvers: then }: Trial,
  { receive, solvers: now }: Pick<Trial, 'receive' | 'solvers'>,
): Reach {
  const [on, felt] = [receive.on.slice(), receive.felt.slice()];
  for (const actor of actors) {
    on[actor] = onThen[actor] as number;
    felt[actor] = feltThen[actor] as number;
  }
  const isNumberedAlike = hasNumbersOf(now, then);
  const blocks = isNumberedAlike
    ? dc.changed
    : renumbered(dc.changed, (block) => now.dc.blockWith(then.dc.contentOf(block) ?? {}));
  const regions = isNumberedAlike
    ? rf.changed
    : renumbered(rf.changed, (number) => {
        const region = then.rf.region(number);
        return region ? now.rf.numberOf(region) : -1;
      });
  return { on, felt, dc: now.dc.solutionFrom(receive.dc, blocks), rf: now.rf.solutionFrom(receive.rf, regions) };
}

const renumbered = <T>(states: ReadonlyMap<number, T>, number: (before: number) => number): Map<number, T> =>
  new Map(Array.from(states, ([before, state]) => [number(before), state]));
