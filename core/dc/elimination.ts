import type { EliminationPlan } from './elimination-plan.ts';

/**
 * Node elimination on conductances (star to mesh, node by node). Only sums, products and quotients of positive numbers
 * occur, nothing is subtracted, so every voltage keeps its relative precision whether joints are micro-ohms or
 * leaks are gigohms (the same reason for which Grassmann, Taksar and Heyman's elimination of Markov chains is exact).
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

  /** Eliminates every node; the conductances that were put in are replaced by those of the meshes. */
  factor() {
    const { order, slotStart, slotNode, pairSlot } = this.plan;
    const { between, toReference, total } = this;
    let pair = 0;
    for (let k = 0; k < order.length; k++) {
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

  /** Volts of every node against its island's reference, from the currents flowing into the nodes, which are used up. */
  solve(amps: Float64Array, volts: Float64Array) {
    const { order, slotStart, slotNode } = this.plan;
    const { between, total } = this;
    for (let k = 0; k < order.length; k++) {
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
    for (let k = order.length - 1; k >= 0; k--) {
      const node = order[k] as number;
      const sum = total[node] as number;
      let current = amps[node] as number;
      for (let s = slotStart[k] as number; s < (slotStart[k + 1] as number); s++) {
        current += (between[s] as number) * (volts[slotNode[s] as number] as number);
      }
      volts[node] = sum === 0 ? 0 : current / sum;
    }
  }
}
