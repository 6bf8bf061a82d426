import type { LoadPart, SupplyPart } from '../../../circuit/circuit.ts';
import type { Reach, Trial } from '../../../keydown/key-down.ts';
import { remember } from '../../../station/remember.ts';
import { type Conductors, passersOf } from '../../../trial/metal/conductors.ts';
import { leastWaysFrom } from '../../../trial/metal/least-way.ts';
import { loadsOf, type Numbered } from '../../../trial/parts.ts';
import { busiest } from '../../../trial/power/battery-life.ts';
import { mainFeederOf } from '../../../trial/power/feeders.ts';
import { followCurrent } from './follow-current.ts';

/** How the current of a load goes: parts of the circuit in the order in which it meets them. */
export interface SuppliedWay {
  readonly load: Numbered<LoadPart>;
  readonly supply: Numbered<SupplyPart>;
  /** The state in which it is so. */
  readonly reach: Reach;
  readonly out: readonly number[];
  /** Null where no metal leads from the load's minus to the supply's: a coil on a line that is open. */
  readonly back: readonly number[] | null;
}

/**
 * The way to every load from the supply that feeds it most: where most of its current goes, by least resistance for one
 * that draws none; while sending, or in receive for a load that is only fed then.
 */
export const suppliedWays = remember((trial: Trial): readonly SuppliedWay[] => {
  const { circuit } = trial;
  const sending = new WaysIn(trial, busiest(trial));
  const receive = new WaysIn(trial, trial.receive);
  return loadsOf(circuit).flatMap((load) => sending.wayTo(load) ?? receive.wayTo(load) ?? []);
});

/** Ways in one state; what leads away from a node is looked for once. */
class WaysIn {
  private readonly conductors: Conductors;
  private readonly from = new Map<number, ReturnType<typeof leastWaysFrom>>();

  constructor(
    private readonly trial: Trial,
    private readonly reach: Reach,
  ) {
    this.conductors = conducting(trial, reach);
  }

  wayTo(load: Numbered<LoadPart>): SuppliedWay | null {
    const supply = mainFeederOf(this.trial.circuit, this.reach, load.part.plus);
    if (!supply) return null;
    const out =
      this.followed(load.part.plus, supply.part.plus, false) ??
      this.least(supply.part.plus, load.part.plus)?.toReversed();
    if (!out) return null;
    const back =
      this.followed(load.part.minus, supply.part.minus, true) ??
      this.least(supply.part.minus, load.part.minus)?.toReversed();
    return { load, supply, reach: this.reach, out: out.toReversed(), back: back ?? null };
  }

  private followed(from: number, to: number, downstream: boolean): number[] | null {
    return followCurrent(this.trial.circuit, this.conductors, this.reach.dc, from, to, downstream);
  }

  private least(from: number, to: number): readonly number[] | undefined {
    return this.waysFrom(from)(to)?.parts;
  }

  private waysFrom(node: number) {
    const ways = this.from.get(node) ?? leastWaysFrom(this.trial.circuit, this.conductors, node);
    this.from.set(node, ways);
    return ways;
  }
}

/** Metal, and the diodes that pass something; a diode across a supply line is no way. Fuses that went are none either. */
function conducting({ circuit, opened }: Trial, { on, dc }: Reach): Conductors {
  const gone = new Set(opened.map(({ part }) => part));
  const passers = passersOf(circuit, on);
  const passes = (i: number) => circuit.parts[i]?.kind !== 'diode' || dc.ampsIn(i) > 1e-6;
  return { ...passers, joins: (i) => passers.joins(i) && !gone.has(i) && passes(i) };
}
