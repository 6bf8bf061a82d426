import type { EliminationPlan } from './elimination-plan.ts';

/** The conductances after the elimination of what never changes. */
export interface EarlyMesh {
  readonly between: Float64Array;
  readonly toReference: Float64Array;
  readonly total: Float64Array;
}

/**
 * Node elimination on conductances (star to mesh, node by node). Only sums, products and quotients of positive numbers
 * occur, nothing is subtracted, so every voltage keeps its relative precision whether joints are micro-ohms or
 * leaks are gigohms (the same reason for which Grassmann, Taksar and Heyman's elimination of Markov chains is exact).
 * Nodes at which nothing ever changes go first, once; the others each time that something at them has changed.
 */
export class Elimination {
  /** Conductance of each slot, in siemens. */
  readonly between: Float64Array;
  /** Conductance of each node to its island's reference. */
  readonly toReference: Float64Array;
  private readonly total: Float64Array;

  constructor(private readonly plan: EliminationPlan) {
    this.between = new Float64Array(plan.slotNode.length);
    this.toReference = new Float64Array(plan.size);
    this.total = new Float64Array(plan.size);
  }

  clear() {
    this.between.fill(0);
    this.toReference.fill(0);
  }

  /** Eliminates the nodes at which nothing changes, and gives what is left to go on from. */
  factorEarly(): EarlyMesh {
    this.factor(0, this.plan.early, 0);
    return { between: this.between.slice(), toReference: this.toReference.slice(), total: this.total.slice() };
  }

  /** Goes on from there; conductances between the other nodes may be put in. */
  restore({ between, toReference, total }: EarlyMesh) {
    this.between.set(between);
    this.toReference.set(toReference);
    this.total.set(total);
  }

  /** Eliminates the other nodes. */
  factorLate() {
    this.factor(this.plan.early, this.plan.size, this.plan.earlyPairs);
  }

  /** The conductances that were put in at these nodes are replaced by those of the meshes. */
  private factor(first: number, end: number, firstPair: number) {
    const { order, slotStart, slotNode, pairSlot } = this.plan;
    const { between, toReference, total } = this;
    let pair = firstPair;
    for (let k = first; k < end; k++) {
      const node = order[k] as number;
      const from = slotStart[k] as number;
      const to = slotStart[k + 1] as number;
      let sum = toReference[node] as number;
      for (let s = from; s < to; s++) sum += between[s] as number;
      total[node] = sum;
      const count = to - from;
      if (sum === 0) {
        pair += (count * (count - 1)) / 2;
        continue;
      }
      const own = (toReference[node] as number) / sum;
      for (let s = from; s < to; s++) {
        const g = between[s] as number;
        if (g === 0) {
          pair += to - s - 1;
          continue;
        }
        const other = slotNode[s] as number;
        toReference[other] = (toReference[other] as number) + g * own;
        const part = g / sum;
        for (let t = s + 1; t < to; t++) {
          const slot = pairSlot[pair++] as number;
          between[slot] = (between[slot] as number) + part * (between[t] as number);
        }
      }
    }
  }

  /**
   * Volts of the nodes at which something changes against their island's reference, from the currents flowing into them,
   * which are used up. Into the others none may flow.
   */
  solveLate(amps: Float64Array, volts: Float64Array) {
    const { order, slotStart, slotNode, early, size } = this.plan;
    const { between, total } = this;
    for (let k = early; k < size; k++) {
      const node = order[k] as number;
      const sum = total[node] as number;
      if (sum === 0) continue;
      const share = (amps[node] as number) / sum;
      if (share === 0) continue;
      for (let s = slotStart[k] as number; s < (slotStart[k + 1] as number); s++) {
        const other = slotNode[s] as number;
        amps[other] = (amps[other] as number) + share * (between[s] as number);
      }
    }
    this.back(amps, volts, size, early);
  }

  /** Volts of the nodes at which nothing changes, from those of the others. */
  solveEarly(volts: Float64Array) {
    this.back(null, volts, this.plan.early, 0);
  }

  private back(amps: Float64Array | null, volts: Float64Array, end: number, first: number) {
    const { order, slotStart, slotNode } = this.plan;
    const { between, total } = this;
    for (let k = end - 1; k >= first; k--) {
      const node = order[k] as number;
      const sum = total[node] as number;
      let current = amps === null ? 0 : (amps[node] as number);
      for (let s = slotStart[k] as number; s < (slotStart[k + 1] as number); s++) {
        current += (between[s] as number) * (volts[slotNode[s] as number] as number);
      }
      volts[node] = sum === 0 ? 0 : current / sum;
    }
  }
}
