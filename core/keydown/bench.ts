import type { ActorStates, Circuit, CircuitActor } from '../circuit/circuit.ts';
import type { DcSolution } from '../dc/dc-solution.ts';
import type { RfSolution } from '../rf/rf-solution.ts';
import { isFelt } from './feel.ts';
import type { ActorEvent, KeyDown, Moment, Reach, Solvers } from './key-down.ts';

interface Pending {
  readonly atMs: number;
  readonly on: boolean;
}

/** The station in time: which actors are on, what is solved, what is to come. */
export class Bench {
  private readonly on: ActorStates;
  private readonly felt: Uint8Array;
  /** What is to come, by actor. */
  private readonly pending = new Map<number, Pending>();
  private timeMs = 0;
  private pressed: readonly number[] = [];
  private dc: DcSolution | null = null;
  private rf: RfSolution | null = null;
  private readonly events: ActorEvent[] = [];
  private readonly moments: Moment[] = [];
  private phase: Moment['name'] = 'receive';

  /** What of the station the watched actors can change. */
  private readonly changing: { readonly blocks: readonly number[]; readonly regions: readonly number[] };

  /** Only `actors` are watched; from `start` on all else stays as it is. */
  constructor(
    private readonly circuit: Circuit,
    private readonly solvers: Solvers,
    private readonly open: ReadonlySet<number>,
    private readonly actors: readonly number[],
    private readonly start: Reach,
  ) {
    this.on = start.on.slice();
    this.felt = start.felt.slice();
    this.changing = { blocks: solvers.dc.blocksOf(actors), regions: solvers.rf.regionsWith(actors) };
  }

  /** Lets the station come to rest with nobody at a control, and gives what it is then, and the actors that still change. */
  rest(): { reach: Reach; restless: readonly number[] } {
    const settled = this.run();
    return { reach: this.reach(), restless: settled ? [] : [...this.pending.keys()] };
  }

  /** Presses controls, holds them until all is settled and at least so long, lets go, and waits until it is at rest. */
  press(controls: readonly number[], holdMs: number): KeyDown {
    this.remember();
    this.phase = 'going over';
    this.pressed = controls;
    const over = this.run();
    const releasedMs = Math.max(holdMs, this.timeMs);
    this.phase = 'sending';
    this.remember();
    this.phase = 'going back';
    this.timeMs = releasedMs;
    this.pressed = [];
    const back = this.run();
    this.phase = 'receive';
    this.remember();
    const { events, moments, timeMs } = this;
    return { controls, releasedMs, endMs: timeMs, events, moments: tidy(moments), settled: over && back };
  }

  private reach(): Reach {
    const { dc, rf } = this.look();
    return { on: this.on.slice(), felt: this.felt.slice(), dc, rf };
  }

  private look(): { dc: DcSolution; rf: RfSolution } {
    const { start, on, open, changing } = this;
    const { dc, rf } = this.solvers;
    this.dc ??= dc.solveFrom(start.dc, changing.blocks, on, open);
    this.rf ??= rf.solveFrom(start.rf, changing.regions, on);
    return { dc: this.dc, rf: this.rf };
  }

  private remember() {
    this.moments.push({ startMs: this.timeMs, name: this.phase, reach: this.reach() });
  }

  /** Goes from event to event until nothing is to come; false where that has no end. */
  private run(): boolean {
    // A station that settles changes each actor a few times; one that does not is stopped here and reported.
    const most = 40 + 20 * this.actors.length;
    this.schedule();
    for (let round = 0; round < most; round++) {
      const next = this.nextTime();
      if (next === null) return true;
      this.timeMs = Math.max(this.timeMs, next);
      this.apply(next);
      this.dc = null;
      this.rf = null;
      this.schedule();
      if (this.phase !== 'receive' && this.nextTime() !== this.timeMs) this.remember();
    }
    return false;
  }

  private schedule() {
    const { circuit, on, pending, timeMs, felt } = this;
    const feelable = { circuit, on, pressed: this.pressed, ...this.look() };
    for (const i of this.actors) {
      const actor = circuit.actors[i] as CircuitActor;
      const feels = actor.stuck ?? actor.feels.some((feel) => isFelt(feel, i, feelable));
      felt[i] = feels ? 1 : 0;
      const wants = actor.stuck ?? (feels && (actor.power === null || on[actor.power] === 1));
      const isOn = on[i] === 1;
      if (wants === isOn) pending.delete(i);
      else if (pending.get(i)?.on !== wants)
        pending.set(i, { atMs: timeMs + (wants ? actor.operateMs : actor.releaseMs), on: wants });
    }
  }

  private nextTime(): number | null {
    let next: number | null = null;
    for (const { atMs } of this.pending.values()) if (next === null || atMs < next) next = atMs;
    return next;
  }

  private apply(atMs: number) {
    for (const i of this.actors) {
      const p = this.pending.get(i);
      if (!p || p.atMs > atMs) continue;
      this.on[i] = p.on ? 1 : 0;
      this.pending.delete(i);
      this.events.push({ atMs, actor: i, on: p.on });
    }
  }
}

/** Moments that last no time at all are not moments. */
function tidy(moments: readonly Moment[]): Moment[] {
  return moments.filter((moment, i) => {
    const next = moments[i + 1];
    return (
      next === undefined || next.startMs > moment.startMs || moment.name === 'receive' || moment.name === 'sending'
    );
  });
}
