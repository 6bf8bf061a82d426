import { opensAbove } from '../catalog/wire/fuse-tables.ts';
import { shareOfRating } from '../catalog/wire/fuses.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { DcSolver } from '../dc/dc-solver.ts';
import { ditMs } from '../quantity/dit-ms.ts';
import { RfSolver } from '../rf/rf-solver.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import { Bench } from './bench.ts';
import { comeToRest, type Rest } from './come-to-rest.ts';
import { GroupsOfBefore, membersOf } from './groups-of-before.ts';
import type { KeyDown, Reach, Solvers, Trial } from './key-down.ts';
import { readPlugs } from './read-plugs.ts';
import { weaveActors } from './weave-actors.ts';

/**
 * Puts a hook-up through its paces: lets it come to rest, opens the fuses that would open then, one after the other,
 * and presses each of its controls alone, and then all of them together, for at least a dit. What is the same in an
 * earlier trial of the hook-up, or in those of `others`, is taken from there.
 */
export function tryHookup(
  station: Station,
  hookup: Hookup,
  before: Trial | null = null,
  others: readonly Trial[] = [],
): Trial {
  const known = [...(before ? [before] : []), ...others];
  const circuit = buildCircuit(
    station,
    hookup,
    known.map((trial) => trial.circuit),
  );
  if (before && circuit === before.circuit) return before;
  const [nearest] = known;
  const solvers = {
    dc: nearest ? nearest.solvers.dc.solverOf(circuit) : new DcSolver(circuit),
    rf: new RfSolver(circuit, nearest?.solvers.rf),
  };
  return tryCircuit(circuit, solvers, ditMs(station.plan.speedWpm), { before });
}

interface Manner {
  /** Parts (plugs out of their jacks) that are taken out. */
  readonly pulled?: ReadonlySet<number>;
  /** False where only what is there in receive is wanted: nothing is pressed, and no plug pulled to see what stands on it. */
  readonly pressing?: boolean;
  /** A trial of the same dit, with nothing pulled, of which what is the same is taken over. */
  readonly before?: Trial | null;
}

/** The same for a circuit with its solvers, at the length of a dit in milliseconds. */
export function tryCircuit(
  circuit: Circuit,
  solvers: Solvers,
  dit: number,
  { pulled = new Set(), pressing = true, before = null }: Manner = {},
): Trial {
  const web = weaveActors(circuit, solvers, before);
  const members = membersOf(web);
  const known = GroupsOfBefore.of(circuit, solvers, web, before);
  const groups = [...members.values()];
  const restBefore = known && before ? { reach: before.atFirst, restless: before.restless } : null;

  const open = new Set(pulled);
  const opened: { part: number; amps: number }[] = [];
  const others = groups.filter((actors) => !known?.areSame(actors));
  const atFirst = comeToRest(circuit, solvers, open, others, restBefore);
  let rest: Rest = atFirst;
  for (let worst = worstFuse(circuit, rest.reach, open); worst; worst = worstFuse(circuit, rest.reach, open)) {
    open.add(worst.part);
    opened.push(worst);
    rest = comeToRest(circuit, solvers, open, groups);
  }
  const { reach: receive, restless } = rest;
  const state = { circuit, solvers, web, atFirst: atFirst.reach, receive, restless, opened };
  if (!pressing) return { ...state, plugVolts: new Map(), keyDowns: [] };

  const press = (pressed: readonly number[]): KeyDown => {
    const names = [...new Set(pressed.map((control) => web.group[control] as number))];
    const own = names.map((name) => members.get(name) ?? []);
    const actors = own.flat().sort((a, b) => a - b);
    const isSame = opened.length === 0 && own.every((group) => known?.areSame(group));
    const again = isSame ? known?.press(pressed, actors, receive) : undefined;
    return again ?? new Bench(circuit, solvers, open, actors, receive).press(pressed, dit);
  };
  const controls = circuit.actors.flatMap((actor, i) => (actor.feels.some((f) => f.type === 'operator') ? [i] : []));
  const keyDowns = controls.map((control) => press([control]));
  if (controls.length > 1) keyDowns.push(press(controls));
  return { ...state, plugVolts: readPlugs(circuit, solvers, atFirst.reach), keyDowns };
}

/** Of the fuses that have not opened yet the one that is furthest beyond what it holds, or null. */
function worstFuse(circuit: Circuit, reach: Reach, open: ReadonlySet<number>): { part: number; amps: number } | null {
  let worst: { part: number; amps: number; ratio: number } | null = null;
  circuit.parts.forEach((part, i) => {
    if (part.kind !== 'resistor' || !part.fuse || open.has(i)) return;
    const amps = Math.abs(reach.dc.ampsIn(i));
    const ratio = shareOfRating(amps, part.fuse.ratedAmps);
    if (ratio > opensAbove && (!worst || ratio > worst.ratio)) worst = { part: i, amps, ratio };
  });
  return worst;
}
