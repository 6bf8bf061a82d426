import type { Circuit } from '../circuit/circuit.ts';
import type { ActorWeb, KeyDown, Reach, Solvers, Trial } from './key-down.ts';
import { pressAgain } from './press-again.ts';
import { touchedActors } from './touched-actors.ts';

/** The actors of each group, by its number. */
export function membersOf({ group }: ActorWeb): ReadonlyMap<number, readonly number[]> {
  const members = new Map<number, number[]>();
  group.forEach((name, actor) => {
    const list = members.get(name);
    if (list) list.push(actor);
    else members.set(name, [actor]);
  });
  return members;
}

/** What can be taken over, group by group, from an earlier trial in which no fuse opened. */
export class GroupsOfBefore {
  private readonly members: ReadonlyMap<number, readonly number[]>;

  private constructor(
    private readonly solvers: Solvers,
    private readonly before: Trial,
    private readonly touched: Uint8Array,
  ) {
    this.members = membersOf(before.web);
  }

  /** Null where nothing of the earlier trial can serve. */
  static of(circuit: Circuit, solvers: Solvers, web: ActorWeb, before: Trial | null): GroupsOfBefore | null {
    // Where fuses have opened the rest of the station is not what it was.
    if (!before || before.opened.length > 0) return null;
    const touched = touchedActors(circuit, solvers, web, before);
    return touched && new GroupsOfBefore(solvers, before, touched);
  }

  /** Whether these actors were a group, and nothing that they have to do with is other than it was. */
  areSame(actors: readonly number[]): boolean {
    const [first = -1] = actors;
    const then = this.members.get(this.before.web.group[first] ?? -1) ?? [];
    return isSameList(then, actors) && actors.every((actor) => this.touched[actor] === 0);
  }

  /** The press of these controls, by these actors, as it was; undefined where it may be another one now. */
  press(controls: readonly number[], actors: readonly number[], receive: Reach): KeyDown | undefined {
    const { before, solvers } = this;
    if (!this.actAsBefore(actors, receive)) return undefined;
    const earlier = before.keyDowns.find((keyDown) => isSameList(keyDown.controls, controls));
    return earlier && pressAgain(earlier, actors, before, { receive, solvers });
  }

  /** What actors act on may depend on others, which need not be in the state that they were in. */
  private actAsBefore(actors: readonly number[], receive: Reach): boolean {
    const { dc, rf } = this.solvers;
    const isAsBefore = (actor: number) => actor < 0 || receive.on[actor] === this.before.receive.on[actor];
    return (
      dc.blocksOf(actors).every((block) => dc.actorsIn(block).every(isAsBefore)) &&
      rf.regionsWith(actors).every((region) => (rf.region(region)?.actors ?? []).every(isAsBefore))
    );
  }
}

const isSameList = (some: readonly number[], others: readonly number[]): boolean =>
  some.length === others.length && some.every((one, i) => one === others[i]);
