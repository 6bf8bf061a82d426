import type { ActorStates, Circuit, CircuitActor } from '../circuit/circuit.ts';
import type { DcSolution, DcSolver } from '../dc/solve-dc.ts';
import type { RfSolution, RfSolver } from '../rf/solve-rf.ts';
import { isFelt } from './feel.ts';
import type { ActorEvent, KeyDown, Moment, Reach } from './key-down.ts';

/** Both solvers of one circuit. */
export interface Solvers {
  readonly dc: DcSolver;
  readonly rf: RfSolver;
}

interface Pending {
  readonly atMs: number;
  readonly on: boolean;
}

/** The station in time: which actors are on, what is solved, what is to come. */
export class Bench {
  private readonly on: ActorStates;
  private readonly felt: Uint8Array;
  private readonly pending: (Pending | null)[];
  private timeMs = 0;
  private pressed: readonly number[] = [];
  private dc: DcSolution | null = null;
  private rf: RfSolution | null = null;
  private readonly events: ActorEvent[] = [];
  private readonly moments: Moment[] = [];
  private phase: Moment['name'] = 'receive';

  /** Only `actors` are watched; the others stay as they are at the start. */
  constructor(
    private readonly circuit: Circuit,
    private readonly solvers: Solvers,
    private readonly open: ReadonlySet<number>,
    private readonly actors: readonly number[] = circuit.actors.map((_, i) => i),
    start?: Reach,
  ) {
    this.on = start ? Uint8Array.from(start.on) : new Uint8Array(circuit.actors.length);
    this.felt = start ? Uint8Array.from(start.felt) : new Uint8Array(circuit.actors.length);
    this.pending = circuit.actors.map(() => null);
  }

  /** Lets the station come to rest with nobody at a control, and gives what it is then. */
  rest(): { reach: Reach; settled: boolean } {
    const settled = this.run();
    return { reach: this.reach(), settled };
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
    return { on: Uint8Array.from(this.on), felt: Uint8Array.from(this.felt), dc, rf };
  }

  private look(): { dc: DcSolution; rf: RfSolution } {
    this.dc ??= this.solvers.dc.solve(this.on, this.open);
    this.rf ??= this.solvers.rf.solve(this.on);
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
    const { dc, rf } = this.look();
    for (const i of this.actors) {
      const actor = circuit.actors[i] as CircuitActor;
      const feels = actor.feels.some((feel) => isFelt(circuit, feel, i, dc, rf, on, this.pressed));
      felt[i] = feels ? 1 : 0;
      const wants = feels && (actor.power === null || on[actor.power] === 1);
      const isOn = on[i] === 1;
      if (wants === isOn) pending[i] = null;
      else if (pending[i]?.on !== wants)
        pending[i] = { atMs: timeMs + (wants ? actor.operateMs : actor.releaseMs), on: wants };
    }
  }

  private nextTime(): number | null {
    let next: number | null = null;
    for (const i of this.actors) {
      const atMs = this.pending[i]?.atMs;
      if (atMs !== undefined && (next === null || atMs < next)) next = atMs;
    }
    return next;
  }

  private apply(atMs: number) {
    for (const i of this.actors) {
      const p = this.pending[i];
      if (!p || p.atMs > atMs) continue;
      this.on[i] = p.on ? 1 : 0;
      this.pending[i] = null;
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
