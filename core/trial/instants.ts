import type { KeyDown, Moment, Reach, Trial } from '../keydown/key-down.ts';
import { remember, rememberEach } from '../station/remember.ts';

/** In the order of time. */
export const momentNames = ['receive', 'going over', 'sending', 'going back'] as const satisfies Moment['name'][];

/** When something is so, as it stands in a sentence. */
export const momentWords: Record<Moment['name'], string> = {
  receive: 'in receive',
  'going over': 'while going over',
  sending: 'in sending',
  'going back': 'while going back',
};

/** A moment of a trial: its name for a finding, what the station looks like, and the key-down it belongs to. */
export interface Instant {
  readonly name: Moment['name'];
  readonly reach: Reach;
  readonly keyDown: KeyDown | null;
}

/** Receive, and every moment of every key-down: the settled ones first, so that of two alike they are told. */
export const instantsOf = remember((trial: Trial): readonly Instant[] => {
  const passing = trial.keyDowns.flatMap((keyDown) =>
    keyDown.moments
      .slice(1, -1)
      .filter((m) => m.name !== 'sending')
      .map((m) => ({ name: m.name, reach: m.reach, keyDown })),
  );
  return [{ name: 'receive', reach: trial.receive, keyDown: null }, ...sendingsOf(trial), ...passing];
});

/** The settled moment of each key-down with the control held. */
export const sendingsOf = remember((trial: Trial): readonly Instant[] =>
  trial.keyDowns.flatMap((keyDown) =>
    keyDown.moments.filter((m) => m.name === 'sending').map((m) => ({ name: m.name, reach: m.reach, keyDown })),
  ),
);

/**
 * For each block of the circuit and each region of its RF, the instants (numbers in `instantsOf`) at which it is not as
 * in receive. A press changes little of a large station: rules look where something changed, not everywhere each time.
 */
const changesIn = remember((trial: Trial) => {
  const blocks = new Map<number, number[]>();
  const regions = new Map<number, number[]>();
  instantsOf(trial).forEach(({ reach, name }, i) => {
    if (name === 'receive') return;
    for (const block of reach.dc.changed.keys()) push(blocks, block, i);
    for (const region of reach.rf.changed.keys()) push(regions, region, i);
  });
  return { blocks, regions };
});

function push(lists: Map<number, number[]>, key: number, item: number) {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** Receive, all instants of these, and of each name one at which nothing of it has changed, if there is one. */
function withUnchanged(trial: Trial, changed: readonly number[]): Instant[] {
  const all = instantsOf(trial);
  const known = new Set(changed);
  const names = new Set<Moment['name']>();
  const chosen = [...changed];
  for (let i = 0; i < all.length && names.size < momentNames.length; i++) {
    const { name } = all[i] as Instant;
    if (known.has(i) || names.has(name)) continue;
    names.add(name);
    chosen.push(i);
  }
  return chosen.sort((a, b) => a - b).map((i) => all[i] as Instant);
}

/** Receive, and the first of each name: all that there is of what never changes. */
const firstsOf = remember((trial: Trial): readonly Instant[] => withUnchanged(trial, []));

/** The instants at which a block is in different states; of those alike in state and name, the first. */
const instantsOfBlock = rememberEach((trial: Trial, block: number): readonly Instant[] => {
  const changes = changesIn(trial).blocks.get(block);
  if (!changes) return firstsOf(trial);
  const met = new Map<string, Set<object>>(momentNames.map((name) => [name, new Set()]));
  return withUnchanged(trial, changes).filter(({ name, reach }) => {
    const states = met.get(name);
    const state = reach.dc.at(block);
    if (!states || states.has(state)) return false;
    states.add(state);
    return true;
  });
});

/** The instants at which what flows in a part and stands across it differs. */
export const instantsOfPart = (trial: Trial, part: number): readonly Instant[] =>
  instantsOfBlock(trial, trial.receive.dc.blockOf(part));

/** The instants at which the voltage between two nodes differs. */
export function instantsBetween(trial: Trial, a: number, b: number): readonly Instant[] {
  const blocks = trial.receive.dc.blocksBetween(a, b);
  if (blocks.length === 1 && blocks[0] !== undefined) return instantsOfBlock(trial, blocks[0]);
  const { blocks: changes } = changesIn(trial);
  return withUnchanged(trial, [...new Set(blocks.flatMap((block) => changes.get(block) ?? []))]);
}

/** The instants at which the RF of a region differs, with those that differ elsewhere only once for each name. */
export function instantsOfRegion(trial: Trial, region: number): readonly Instant[] {
  trial.circuit.reads.note('region', region);
  return instantsIn(trial, region);
}

const instantsIn = rememberEach((trial: Trial, region: number): readonly Instant[] =>
  withUnchanged(trial, changesIn(trial).regions.get(region) ?? []),
);
