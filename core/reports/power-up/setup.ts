import { buildCircuit } from '../../circuit/build-circuit.ts';
import type { ActorStates, Circuit } from '../../circuit/circuit.ts';
import type { DcSolution } from '../../dc/dc-solution.ts';
import { DcSolver } from '../../dc/dc-solver.ts';
import type { Reach, Solvers, Trial } from '../../keydown/key-down.ts';
import { tryCircuit } from '../../keydown/try-hookup.ts';
import { ditMs } from '../../quantity/dit-ms.ts';
import { RfSolver } from '../../rf/rf-solver.ts';
import type { CableEnd, Hookup, Station } from '../../station/schema/schema.ts';
import { inWorkings, type Workings } from './workings.ts';

/** How the station stands while a reading is taken. */
export interface Setup {
  /** With only those cables that are plugged in by then. */
  readonly station: Station;
  readonly hookup: Hookup;
  /** Plugs out of their jacks. */
  readonly pulled: readonly { readonly cable: string; readonly end: CableEnd }[];
  /** The control that is pressed, `unit.actor`; null for none. */
  readonly control: string | null;
  /** False while every supply is off. */
  readonly powered: boolean;
  /** What its draft has worked out so far. */
  readonly workings: Workings;
}

/** What a meter has before it. */
export interface Seen {
  readonly circuit: Circuit;
  readonly on: ActorStates;
  /** Parts that are out: pulled plugs, opened fuses. */
  readonly open: ReadonlySet<number>;
  /** Null while nothing is powered. */
  readonly reach: Reach | null;
  readonly dc: DcSolution | null;
}

/** What a meter shows: volts, amperes, ohms, watts or an SWR; null for an open circuit, or where nothing shows. */
export type Probe = (seen: Seen) => number | null;

export const isSameDrawing = (a: Setup, b: Setup): boolean => a.station === b.station && a.hookup === b.hookup;

const isPluggedAlike = (a: Setup, b: Setup): boolean =>
  isSameDrawing(a, b) &&
  a.pulled.length === b.pulled.length &&
  a.pulled.every(({ cable, end }, i) => cable === b.pulled[i]?.cable && end === b.pulled[i]?.end);

/** Whether the same is seen in both. */
export const isSameSetup = (a: Setup, b: Setup): boolean =>
  a === b || (a.powered === b.powered && a.control === b.control && isPluggedAlike(a, b));

export const circuitOf = inWorkings(({ station, hookup, workings }: Setup): Circuit => {
  const whole = workings.tried(hookup);
  return buildCircuit(station, hookup, whole ? [whole.circuit] : []);
}, isSameDrawing);

/** Of the circuit as drawn. */
const solversOf = inWorkings((setup: Setup): Solvers => {
  const circuit = circuitOf(setup);
  const whole = setup.workings.tried(setup.hookup)?.solvers;
  return { dc: whole?.dc.solverOf(circuit) ?? new DcSolver(circuit), rf: new RfSolver(circuit, whole?.rf) };
}, isSameDrawing);

/** A solver of a setup's circuit with something in it different. */
export const dcSolverOf = (setup: Setup, circuit: Circuit): DcSolver => solversOf(setup).dc.solverOf(circuit);

/** With every control pressed. */
export const trialOf = inWorkings((setup: Setup): Trial => tryOut(setup, circuitOf(setup), true), isPluggedAlike);

/** In receive only: a good deal quicker where there are many controls. */
const restOf = inWorkings((setup: Setup): Trial => tryOut(setup, circuitOf(setup), false), isPluggedAlike);

/** What is seen in a setup as drawn. */
export const seenIn = inWorkings((setup: Setup): Seen => {
  if (!setup.powered) return unpowered(setup, circuitOf(setup));
  return seenAt(setup, setup.control === null ? restOf(setup) : trialOf(setup));
}, isSameSetup);

/** The same with another circuit of the same parts: something in it has failed. */
export function seenWith(setup: Setup, circuit: Circuit): Seen {
  if (!setup.powered) return unpowered(setup, circuit);
  return seenAt(setup, tryOut(setup, circuit, setup.control !== null));
}

function tryOut(setup: Setup, circuit: Circuit, pressing: boolean): Trial {
  const rf = circuit.rf === circuitOf(setup).rf ? solversOf(setup).rf : new RfSolver(circuit);
  const solvers = { dc: dcSolverOf(setup, circuit), rf };
  const dit = ditMs(setup.station.plan.speedWpm);
  const pulled = pulledParts(setup, circuit);
  const before = pulled.size === 0 ? setup.workings.tried(setup.hookup) : null;
  return tryCircuit(circuit, solvers, dit, { pulled, pressing, before });
}

const unpowered = (setup: Setup, circuit: Circuit): Seen => ({
  circuit,
  on: Uint8Array.from(circuit.actors, (actor) => (actor.stuck ? 1 : 0)),
  open: pulledParts(setup, circuit),
  reach: null,
  dc: null,
});

function seenAt(setup: Setup, trial: Trial): Seen {
  const { circuit } = trial;
  const reach = setup.control === null ? trial.receive : (pressedReach(trial, setup.control) ?? trial.receive);
  const open = new Set([...pulledParts(setup, circuit), ...trial.opened.map((o) => o.part)]);
  return { circuit, on: reach.on, open, reach, dc: reach.dc };
}

/** What the station looks like while one control is held. */
function pressedReach({ circuit, keyDowns }: Trial, control: string): Reach | undefined {
  const keyDown = keyDowns.find(
    ({ controls: [only, ...more] }) => more.length === 0 && circuit.actors[only ?? -1]?.key === control,
  );
  return keyDown?.moments.find((m) => m.name === 'sending')?.reach;
}

/** The joints of the pulled plugs. */
function pulledParts(setup: Setup, circuit: Circuit = circuitOf(setup)): ReadonlySet<number> {
  const open = new Set<number>();
  for (const { cable, end } of setup.pulled) {
    circuit.parts.forEach(({ origin }, i) => {
      if (origin.type === 'mate' && origin.cable === cable && origin.end === end) open.add(i);
    });
  }
  return open;
}
