import type { ActorStates, Circuit, CompiledFeel, LoadPart } from '../circuit/circuit.ts';
import type { DcSolution } from '../dc/dc-solution.ts';
import type { RfSolution } from '../rf/rf-solution.ts';

/** Volts between two nodes, or null where nothing joins them so that any voltage could stand there. */
export const voltsBetween = (dc: DcSolution, a: number, b: number): number | null => dc.between(a, b);

/** What there is to feel in a circuit just now. */
interface Feelable {
  readonly circuit: Circuit;
  readonly dc: DcSolution;
  readonly rf: RfSolution;
  readonly on: ActorStates;
  /** Actors of the controls that somebody holds. */
  readonly pressed: readonly number[];
}

/** Whether an actor feels this. */
export function isFelt(feel: CompiledFeel, actor: number, { circuit, dc, rf, on, pressed }: Feelable): boolean {
  switch (feel.type) {
    case 'operator':
      return pressed.includes(actor);
    case 'voltageBelow': {
      const volts = voltsBetween(dc, feel.node, feel.reference);
      return volts !== null && volts < feel.volts;
    }
    case 'voltageAbove': {
      const volts = voltsBetween(dc, feel.node, feel.reference);
      return volts !== null && volts > feel.volts;
    }
    case 'currentAbove':
      return feel.part >= 0 && dc.ampsIn(feel.part) > feel.amps;
    case 'rfAbove':
      return (rf.levelAt(feel.port)?.dbm ?? Number.NEGATIVE_INFINITY) > feel.dbm;
    case 'actor':
      return on[feel.actor] === 1;
    case 'powered':
      return feel.loads.some((i) => {
        const load = circuit.parts[i] as LoadPart;
        return (voltsBetween(dc, load.plus, load.minus) ?? 0) >= Math.max(load.dropOutV, 1e-6);
      });
  }
}
