import type { ActorStates, Circuit } from '../circuit/circuit.ts';
import type { DcSolution, DcSolver } from '../dc/solve-dc.ts';
import { type RfSolution, solveRf } from '../rf/solve-rf.ts';
import { isFelt } from './feel.ts';
import type { ActorEvent, KeyDown, Moment, Reach } from './key-down.ts';

interface Pending {
  readonly atMs: number;
  readonly on: boolean;
}

/** The station in time: which actors are on, what is solved, what is to come. */
export class Bench {
  private on: ActorStates;
  private readonly pending: (Pending | null)[];
  private timeMs = 0;
  private pressed: number | null = null;
  private dc: DcSolution | null = null;
  private rf: RfSolution | null = null;
  private felt = new Uint8Array(0);
  private events: ActorEvent[] = [];
  private moments: Moment[] = [];
  private phase: Moment['name'] = 'receive';

  constructor(
    private readonly circuit: Circuit,
    private readonly solver: DcSolver,
    private readonly open: ReadonlySet<number>,
    start?: Reach,
  ) {
    this.on = start ? Uint8Array.from(start.on) : new Uint8Array(circuit.actors.length);
    this.pending = circuit.actors.map(() => null);
  }

  /** Lets the station come to rest with nobody at a control, and gives what it is then. */
  rest(): { reach: Reach; settled: boolean } {
    const settled = this.run();
    return { reach: this.reach(), settled };
  }

  /** Presses one control, holds it until all is settled and at least so long, lets go, and waits until it is at rest. */
  press(control: number, holdMs: number): KeyDown {
    this.timeMs = 0;
    this.events = [];
    this.moments = [];
    this.look();
    this.remember();
    this.phase = 'going over';
    this.pressed = control;
    const over = this.run();
    const releasedMs = Math.max(holdMs, this.timeMs);
    this.phase = 'sending';
    this.moments.push({ startMs: this.timeMs, name: 'sending', reach: this.reach() });
    this.phase = 'going back';
    this.timeMs = releasedMs;
    this.pressed = null;
    const back = this.run();
    this.moments.push({ startMs: this.timeMs, name: 'receive', reach: this.reach() });
    const { events, moments, timeMs } = this;
    return { control, releasedMs, endMs: timeMs, events, moments: tidy(moments), settled: over && back };
  }

  private reach(): Reach {
    const { dc, rf } = this.look();
    return { on: Uint8Array.from(this.on), felt: this.felt, dc, rf };
  }

  private look(): { dc: DcSolution; rf: RfSolution } {
    this.dc ??= this.solver.solve(this.on, this.open);
    this.rf ??= solveRf(this.circuit, this.on);
    return { dc: this.dc, rf: this.rf };
  }

  private remember() {
    this.moments.push({ startMs: this.timeMs, name: this.phase, reach: this.reach() });
  }

  /** Goes from event to event until nothing is to come; false where that has no end. */
  private run(): boolean {
    // A station that settles changes each actor a few times; one that does not is stopped here and reported.
    const most = 40 + 20 * this.circuit.actors.length;
    for (let round = 0; round < most; round++) {
      this.schedule();
      const next = this.nextTime();
      if (next === null) return true;
      this.timeMs = Math.max(this.timeMs, next);
      this.apply(next);
      this.dc = null;
      this.rf = null;
      this.look();
      this.schedule();
      if (this.phase !== 'receive' && this.nextTime() !== this.timeMs) this.remember();
    }
    return false;
  }

  private schedule() {
    const { circuit, on, pending, timeMs } = this;
    const { dc, rf } = this.look();
    const felt = new Uint8Array(circuit.actors.length);
    circuit.actors.forEach((actor, i) => {
      const feels = actor.feels.some((feel) => isFelt(circuit, feel, i, dc, rf, on, this.pressed));
      felt[i] = feels ? 1 : 0;
      const wants = feels && (actor.power === null || on[actor.power] === 1);
      const isOn = on[i] === 1;
      if (wants === isOn) pending[i] = null;
      else if (pending[i]?.on !== wants)
        pending[i] = { atMs: timeMs + (wants ? actor.operateMs : actor.releaseMs), on: wants };
    });
    this.felt = felt;
  }

  private nextTime(): number | null {
    let next: number | null = null;
    for (const p of this.pending) if (p && (next === null || p.atMs < next)) next = p.atMs;
    return next;
  }

  private apply(atMs: number) {
    this.pending.forEach((p, i) => {
      if (!p || p.atMs > atMs) return;
      this.on[i] = p.on ? 1 : 0;
      this.pending[i] = null;
      this.events.push({ atMs, actor: i, on: p.on });
    });
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
