import { kindOf, unitOf } from '../../station/parts.ts';
import { ringAt } from '../../station/ring-at.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { Act } from '../acts/act.ts';
import { looksOf } from '../acts/alike.ts';
import { isPrevented, jackPairs } from '../acts/jack-pairs.ts';
import { listActs } from '../acts/list-acts.ts';
import type { MixUp } from '../acts/mix-up.ts';

/** Jacks of one unit that a hand can't tell apart and that come to the same: they share a ring. */
export type Jacks = readonly [PortRef, ...PortRef[]];

export type NodePair = readonly [number, number];

/** What has to be told apart so that mix-ups can't happen. */
export interface Conflicts {
  /** The nodes. */
  readonly jacks: readonly Jacks[];
  /** What each mix-up that rings can prevent needs, the worst and easiest first. */
  readonly needs: readonly Need[];
  /** What rings tell apart already and must go on telling, whatever it would do: one of the pairs of each. */
  readonly kept: readonly (readonly NodePair[])[];
  /** Mix-ups that no ring prevents: what they take for each other is not two jacks that differ. */
  readonly left: readonly MixUp[];
}

export interface Need {
  readonly mixUp: MixUp;
  /** For each act that comes to it: one of these pairs told apart. */
  readonly acts: readonly (readonly NodePair[])[];
}

/** The conflicts of a station's mix-ups. */
export function conflictsOf(station: Station, mixUps: readonly MixUp[]): Conflicts {
  const jacks: Jacks[] = [];
  const known = new Map<string, number>();
  const nodeOf = (ref: PortRef): number => {
    const key = keyOf(station, ref);
    const found = known.get(key);
    if (found !== undefined) return found;
    const alike = kindOf(station, unitOf(station, ref.unit)).ports.flatMap(({ id }): PortRef[] => {
      const other = { unit: ref.unit, port: id };
      return id !== ref.port && keyOf(station, other) === key ? [other] : [];
    });
    known.set(key, jacks.length);
    return jacks.push([ref, ...alike]) - 1;
  };
  const pairsOf = (act: Act) =>
    jackPairs(station, act)
      .map(([from, to]): NodePair => [nodeOf(from), nodeOf(to)])
      .filter(([from, to]) => from !== to);
  const all = mixUps.map((mixUp): Need => ({ mixUp, acts: [mixUp.act, ...mixUp.alike].map(pairsOf) }));
  const isPossible = ({ acts }: Need) => acts.every((pairs) => pairs.length > 0);
  return {
    needs: all.filter(isPossible),
    left: all.filter((need) => !isPossible(need)).map(({ mixUp }) => mixUp),
    kept: listActs(station)
      .filter((act) => isPrevented(station, act))
      .map(pairsOf),
    jacks,
  };
}

const keyOf = (station: Station, ref: PortRef): string =>
  JSON.stringify([ref.unit, ringAt(station, ref), looksOf(station, ref)]);
