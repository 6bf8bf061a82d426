import type { ActorStates, Circuit } from '../circuit/circuit.ts';
import type { DcSolution } from '../dc/dc-solution.ts';
import type { DcSolver } from '../dc/dc-solver.ts';
import type { RfSolution } from '../rf/rf-solution.ts';
import type { RfSolver } from '../rf/rf-solver.ts';

/** What the station looks like while nothing changes. */
export interface Reach {
  readonly on: ActorStates;
  /** What each actor feels, whether or not its unit has power. */
  readonly felt: Uint8Array;
  readonly dc: DcSolution;
  readonly rf: RfSolution;
}

export interface Moment {
  readonly startMs: number;
  readonly name: 'receive' | 'going over' | 'sending' | 'going back';
  readonly reach: Reach;
}

/** An actor that changed. */
export interface ActorEvent {
  readonly atMs: number;
  readonly actor: number;
  readonly on: boolean;
}

/** One control, or all of them together, pressed at 0 and let go. */
export interface KeyDown {
  /** Indices of the operators' actors. */
  readonly controls: readonly number[];
  readonly releasedMs: number;
  readonly endMs: number;
  readonly events: readonly ActorEvent[];
  /** In order of time; the last one is receive again. */
  readonly moments: readonly Moment[];
  /** False where it went on changing until it was stopped. */
  readonly settled: boolean;
}

/** What each actor has to do with: by actor, the blocks and regions by which it feels, and those that it acts on. */
export interface ActorWeb {
  readonly blocks: readonly (readonly number[])[];
  readonly regions: readonly (readonly number[])[];
  /** By actor the number of its group: a press changes nothing outside the group of its control. */
  readonly group: Int32Array;
}

/** Both solvers of one circuit. */
export interface Solvers {
  readonly dc: DcSolver;
  readonly rf: RfSolver;
}

/** Volts between the two contacts of a plug at the end of a cable. */
export interface PlugReading {
  readonly cable: string;
  readonly volts: number;
}

/** A hook-up put through its paces: at rest, and with each control pressed. */
export interface Trial {
  readonly circuit: Circuit;
  readonly solvers: Solvers;
  readonly web: ActorWeb;
  /** At rest, as it is in the first instant: with every fuse whole. */
  readonly atFirst: Reach;
  /** At rest, with the fuses gone that would open. */
  readonly receive: Reach;
  /** Actors that never come to rest with nobody at a control. */
  readonly restless: readonly number[];
  /** Fuses (parts of the circuit) that open at rest, each with the current that it opened at, in the order in which they went. */
  readonly opened: readonly { readonly part: number; readonly amps: number }[];
  /** For each load (a part) that is not fed as it should be at first: what a meter reads on its plug, pulled out of its jack. */
  readonly plugVolts: ReadonlyMap<number, PlugReading>;
  readonly keyDowns: readonly KeyDown[];
}
