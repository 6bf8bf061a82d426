import { shareOfRating } from '../catalog/wire/fuses.ts';
import { ditMs } from '../circuit/add-actors.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { DcSolver } from '../dc/solve-dc.ts';
import { RfSolver } from '../rf/solve-rf.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import { voltsBetween } from './feel.ts';
import { groupActors } from './influence.ts';
import type { KeyDown, PlugReading, Reach, Trial } from './key-down.ts';
import { Bench, type Solvers } from './press.ts';

/** A fuse opens for good within ten minutes above this share of its rating (ISO 8820-3: 135 % opens in 0.75 to 600 s). */
export const opensAbove = 1.35;

/**
 * Puts a hook-up through its paces: lets it come to rest, opens the fuses that would open then, one after the other,
 * and presses each of its controls alone, and then all of them together, for at least a dit.
 */
export function tryHookup(station: Station, hookup: Hookup): Trial {
  const circuit = buildCircuit(station, hookup);
  return tryCircuit(circuit, { dc: new DcSolver(circuit), rf: new RfSolver(circuit) }, ditMs(station.plan.speedWpm));
}

/**
 * The same for a circuit with its solvers, at the length of a dit; parts in `pulled` (plugs out of their jacks) are taken
 * out. Nothing is pressed, and no plug is pulled to see what stands on it, where only what is there in receive is
 * wanted.
 */
export function tryCircuit(
  circuit: Circuit,
  solvers: Solvers,
  dit: number,
  pulled: ReadonlySet<number> = new Set(),
  pressing = true,
): Trial {
  const open = new Set(pulled);
  const opened: { part: number; amps: number }[] = [];
  let { reach: receive, restless } = new Bench(circuit, solvers, open).rest();
  const atFirst = receive;
  for (let worst = worstFuse(circuit, receive, open); worst; worst = worstFuse(circuit, receive, open)) {
    open.add(worst.part);
    opened.push(worst);
    ({ reach: receive, restless } = new Bench(circuit, solvers, open).rest());
  }
  if (!pressing) return { circuit, atFirst, receive, restless, opened, plugVolts: new Map(), keyDowns: [] };
  const controls = circuit.actors.flatMap((actor, i) => (actor.feels.some((f) => f.type === 'operator') ? [i] : []));
  const group = groupActors(circuit, solvers.dc, solvers.rf);
  const members = new Map<number, number[]>();
  group.forEach((name, actor) => {
    const list = members.get(name);
    if (list) list.push(actor);
    else members.set(name, [actor]);
  });
  const press = (pressed: readonly number[]): KeyDown => {
    const touched = new Set(pressed.map((control) => group[control] as number));
    const actors = [...touched].flatMap((name) => members.get(name) ?? []).sort((a, b) => a - b);
    return new Bench(circuit, solvers, open, actors, receive).press(pressed, dit);
  };
  const keyDowns = controls.map((control) => press([control]));
  if (controls.length > 1) keyDowns.push(press(controls));
  return { circuit, atFirst, receive, restless, opened, plugVolts: readPlugs(circuit, solvers.dc, atFirst), keyDowns };
}

/** What stands on the plugs of the loads that get less than they need, with each jack's plugs pulled; of several plugs the most reversed. */
function readPlugs(circuit: Circuit, solver: DcSolver, reach: Reach): Map<number, PlugReading> {
  const read = new Map<number, PlugReading>();
  circuit.parts.forEach((load, i) => {
    if (load.kind !== 'load' || (voltsBetween(reach.dc, load.plus, load.minus) ?? 0) >= load.dropOutV) return;
    const joints = circuit.parts.flatMap((part, k) => {
      if (part.kind !== 'resistor' || part.origin.type !== 'mate') return [];
      return part.b === load.plus || part.b === load.minus ? [{ k, part, origin: part.origin }] : [];
    });
    const pulled = solver.solve(reach.on, new Set(joints.map(({ k }) => k)));
    for (const { part, origin } of joints) {
      if (part.b !== load.plus) continue;
      const isOfPlug = (o: typeof origin) => o.cable === origin.cable && o.end === origin.end;
      const minus = joints.find((j) => j.part.b === load.minus && isOfPlug(j.origin))?.part.a;
      const volts = minus === undefined ? null : voltsBetween(pulled, part.a, minus);
      if (volts !== null && volts < (read.get(i)?.volts ?? Number.POSITIVE_INFINITY))
        read.set(i, { cable: origin.cable, volts });
    }
  });
  return read;
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
