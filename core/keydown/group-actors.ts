import type { Circuit, CompiledFeel, LoadPart } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import type { DcSolver } from '../dc/dc-solver.ts';
import type { RfSolver } from '../rf/rf-solver.ts';

/**
 * Which actors can have anything to do with one another: for each actor the number of its group. An actor depends on
 * those that shape what it feels; a press changes nothing outside the group of its control.
 */
export function groupActors(circuit: Circuit, dc: DcSolver, rf: RfSolver): Int32Array {
  const groups = new Groups(circuit.actors.length);
  circuit.actors.forEach((actor, i) => {
    const shaping = actor.feels.flatMap((feel) => shapingActors(circuit, dc, rf, feel));
    if (actor.power !== null) shaping.push(actor.power);
    for (const other of shaping) if (other >= 0) groups.join(i, other);
  });
  return groups.names();
}

function shapingActors(circuit: Circuit, dc: DcSolver, rf: RfSolver, feel: CompiledFeel): readonly number[] {
  switch (feel.type) {
    case 'operator':
      return [];
    case 'voltageBelow':
    case 'voltageAbove':
      return dc.actorsBetween(feel.node, feel.reference);
    case 'currentAbove':
      return dc.actorsOf(feel.part);
    case 'rfAbove':
      return rf.actorsAt(feel.port);
    case 'actor':
      return [feel.actor];
    case 'powered':
      return feel.loads.flatMap((i) => {
        const load = circuit.parts[i] as LoadPart;
        return dc.actorsBetween(load.plus, load.minus);
      });
  }
}
