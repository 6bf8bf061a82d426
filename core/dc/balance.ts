import { type ActorStates, isOpenGate, type LoadPart, type SupplyPart } from '../circuit/circuit.ts';
import { Elimination } from './elimination.ts';
import { type EliminationPlan, planElimination } from './elimination-plan.ts';
import { findIslands, type Islands, type Network } from './islands.ts';

export type SupplyMode = 'regulating' | 'limiting' | 'off';

/** What stands on the nodes and flows in the parts of one block; indices are the block's own. */
export interface BlockSolution {
  /** Volts by node, against the island's reference; only differences within an island mean something. */
  readonly volts: Float64Array;
  readonly island: Int32Array;
  /** Amperes by part: a to b in a resistor, plus to minus in a load, out of plus of a supply, out of a pull-up. */
  readonly amps: Float64Array;
  /** By part, for supplies. */
  readonly modes: ReadonlyMap<number, SupplyMode>;
  /** False where the loads found no balance; the values are then those of the last try. */
  readonly settled: boolean;
}

/** Anything below is a short: it keeps conductances in the range of the numbers. */
const leastOhms = 1e-6;
/** What keeps a node with nothing but a switched-off load on it from floating off. */
const leakSiemens = 1e-12;
const mostRounds = 300;

/** How a load is taken in a round: a constant current, a conductance while it fades, or nothing when reversed. */
type LoadState = 'fed' | 'fading' | 'none';

/** Solves one network for any of its states; keeps the order of elimination and its working arrays between calls. */
export class NetworkSolver {
  private readonly plan: EliminationPlan;
  private readonly elimination: Elimination;

  constructor(private readonly network: Network) {
    this.plan = planElimination(network.nodes.length, network.parts);
    this.elimination = new Elimination(this.plan);
  }

  /** The state with these actors on and the parts in `open` (its own indices) taken out. */
  solve(on: ActorStates, open: ReadonlySet<number>): BlockSolution {
    const islands = findIslands(this.network, on, open);
    return new Balance(this.network, this.plan, this.elimination, on, islands).find();
  }
}

/** One search for the balance between supplies and loads. */
class Balance {
  private readonly volts: Float64Array;
  private readonly into: Float64Array;
  private readonly amps: Float64Array;
  private readonly modes = new Map<number, SupplyMode>();
  private readonly states = new Map<number, LoadState>();
  /** Current that a load or a pull-up's feed is taken to draw in this round. */
  private readonly drawn: Float64Array;
  private readonly amounts: Float64Array;
  /** Conductance that each load had when the round was set up. */
  private readonly used: Float64Array;
  private limited = new Set<number>();

  constructor(
    private readonly circuit: Network,
    private readonly plan: EliminationPlan,
    private readonly elimination: Elimination,
    on: ActorStates,
    private readonly islands: Islands,
  ) {
    const { nodes, parts } = circuit;
    this.volts = new Float64Array(nodes.length);
    this.into = new Float64Array(nodes.length);
    this.amps = new Float64Array(parts.length);
    this.drawn = new Float64Array(parts.length);
    this.amounts = new Float64Array(parts.length);
    this.used = new Float64Array(parts.length);
    parts.forEach((part, i) => {
      if (islands.inForce[i] === 0) return;
      if (part.kind === 'supply') this.modes.set(i, 'regulating');
      if (part.kind !== 'load') return;
      this.amounts[i] = part.states.find((s) => isOpenGate(s.gate, on))?.amount ?? part.spec.amount;
      this.states.set(i, 'fed');
      this.drawn[i] =
        part.spec.law === 'power'
          ? (this.amounts[i] as number) / Math.max(part.spec.minV, 1)
          : (this.amounts[i] as number);
    });
  }

  find(): BlockSolution {
    let settled = false;
    let stale = true;
    for (let round = 0; round < mostRounds && !settled; round++) {
      if (stale) this.assemble();
      this.inject();
      this.elimination.solve(this.into, this.volts);
      const moved = this.updateSupplies();
      const changed = this.updateLoads();
      stale = moved || changed.conductances;
      settled = !stale && changed.error < 1e-12;
    }
    this.readAmps();
    return { volts: this.volts, island: this.islands.of, amps: this.amps, modes: this.modes, settled };
  }

  private across(a: number, b: number): number {
    return (this.volts[a] as number) - (this.volts[b] as number);
  }

  private conductance(i: number): number {
    const part = this.circuit.parts[i];
    if (!part || this.islands.inForce[i] === 0) return 0;
    switch (part.kind) {
      case 'resistor':
        return 1 / Math.max(part.ohms, leastOhms);
      case 'pullUp':
        return 1 / Math.max(part.spec.ohms, leastOhms);
      case 'supply':
        return this.modes.get(i) === 'regulating' ? 1 / Math.max(part.spec.sourceOhms, leastOhms) : leakSiemens;
      case 'load':
        this.used[i] = this.loadConductance(i, part);
        return (this.used[i] as number) + leakSiemens;
    }
  }

  private loadConductance(i: number, part: LoadPart): number {
    const state = this.states.get(i);
    const amount = this.amounts[i] as number;
    if (state === 'none' || amount === 0) return 0;
    if (part.spec.law === 'resistance') return 1 / Math.max(amount, leastOhms);
    const limited = this.limited.has(this.islands.of[part.plus] as number);
    if (state === 'fed' && !limited) return 0;
    const v = Math.max(part.dropOutV, state === 'fed' ? this.across(part.plus, part.minus) : 0, 1e-3);
    return part.spec.law === 'power' ? amount / (v * v) : amount / v;
  }

  private assemble() {
    const { elimination, plan, islands } = this;
    elimination.clear();
    this.circuit.parts.forEach((part, i) => {
      const slot = plan.partSlot[i] as number;
      const g = slot < 0 ? 0 : this.conductance(i);
      if (g === 0) return;
      const [a, b] =
        part.kind === 'resistor'
          ? [part.a, part.b]
          : part.kind === 'pullUp'
            ? [part.node, part.reference]
            : [part.plus, part.minus];
      if (islands.reference[a] === 1) elimination.toReference[b] = (elimination.toReference[b] as number) + g;
      else if (islands.reference[b] === 1) elimination.toReference[a] = (elimination.toReference[a] as number) + g;
      else elimination.between[slot] = (elimination.between[slot] as number) + g;
    });
    elimination.factor();
  }

  private inject() {
    this.into.fill(0);
    this.circuit.parts.forEach((part, i) => {
      if (this.islands.inForce[i] === 0 || part.kind === 'resistor') return;
      if (part.kind === 'load')
        this.push(part.minus, part.plus, this.isCurrent(i, part) ? (this.drawn[i] as number) : 0);
      else if (part.kind === 'supply') this.push(part.plus, part.minus, this.supplyCurrent(i, part));
      else {
        this.push(part.node, part.reference, part.spec.volts / Math.max(part.spec.ohms, leastOhms));
        if (part.fedFrom !== null) this.push(part.reference, part.fedFrom, this.drawn[i] as number);
      }
    });
    this.islands.reference.forEach((is, node) => {
      if (is === 1) this.into[node] = 0;
    });
  }

  private push(to: number, from: number, amps: number) {
    this.into[to] = (this.into[to] as number) + amps;
    this.into[from] = (this.into[from] as number) - amps;
  }

  private isCurrent(i: number, part: LoadPart): boolean {
    return (
      part.spec.law !== 'resistance' &&
      this.states.get(i) === 'fed' &&
      !this.limited.has(this.islands.of[part.plus] as number)
    );
  }

  private supplyCurrent(i: number, part: SupplyPart): number {
    const mode = this.modes.get(i);
    if (mode === 'off') return 0;
    return mode === 'limiting' ? part.spec.peakAmps : part.spec.volts / Math.max(part.spec.sourceOhms, leastOhms);
  }

  /** True where a supply changed its way of working. */
  private updateSupplies(): boolean {
    let moved = false;
    for (const [i, mode] of this.modes) {
      const part = this.circuit.parts[i] as SupplyPart;
      const ohms = Math.max(part.spec.sourceOhms, leastOhms);
      const amps = (part.spec.volts - this.across(part.plus, part.minus)) / ohms;
      let next = mode;
      if (mode === 'regulating' && amps > part.spec.peakAmps && part.spec.beyond !== 'sags')
        next = part.spec.beyond === 'limits' ? 'limiting' : 'off';
      else if (mode === 'limiting' && amps < part.spec.peakAmps * (1 - 1e-9)) next = 'regulating';
      if (next === mode) continue;
      this.modes.set(i, next);
      moved = true;
    }
    if (moved)
      this.limited = new Set(
        [...this.modes].flatMap(([i, mode]) =>
          mode === 'limiting' ? [this.islands.of[(this.circuit.parts[i] as SupplyPart).plus] as number] : [],
        ),
      );
    return moved;
  }

  private updateLoads(): { conductances: boolean; error: number } {
    let conductances = false;
    let error = 0;
    this.circuit.parts.forEach((part, i) => {
      if (this.islands.inForce[i] === 0 || part.kind === 'resistor' || part.kind === 'supply') return;
      const before = this.drawn[i] as number;
      let now: number;
      if (part.kind === 'pullUp') {
        if (part.fedFrom === null || this.islands.of[part.fedFrom] !== this.islands.of[part.node]) return;
        now = (part.spec.volts - this.across(part.node, part.reference)) / Math.max(part.spec.ohms, leastOhms);
      } else {
        const v = this.across(part.plus, part.minus);
        if (this.nextState(i, part, v)) conductances = true;
        now =
          part.spec.law === 'power' && this.states.get(i) === 'fed'
            ? (this.amounts[i] as number) / Math.max(v, part.dropOutV, 1e-3)
            : (this.amounts[i] as number);
        // A load fed by a limiting supply is a conductance that follows its voltage until it draws what it wants.
        const follows = this.states.get(i) === 'fed' && this.limited.has(this.islands.of[part.plus] as number);
        if (
          follows &&
          part.spec.law !== 'resistance' &&
          Math.abs((this.used[i] as number) * v - now) > 1e-12 * Math.max(1, now)
        )
          conductances = true;
      }
      this.drawn[i] = now;
      error = Math.max(error, Math.abs(now - before) / Math.max(1, Math.abs(now)));
    });
    return { conductances, error };
  }

  /** Moves a load between fed, fading and nothing; true where it moved. */
  private nextState(i: number, part: LoadPart, v: number): boolean {
    const state = this.states.get(i) as LoadState;
    let next = state;
    if (state === 'fed' && v < part.dropOutV) next = 'fading';
    else if (state === 'fading') next = v >= part.dropOutV ? 'fed' : v < 0 ? 'none' : 'fading';
    else if (state === 'none' && v > 0) next = 'fading';
    if (next === state) return false;
    this.states.set(i, next);
    return true;
  }

  private readAmps() {
    this.circuit.parts.forEach((part, i) => {
      if (this.islands.inForce[i] === 0) return;
      if (part.kind === 'resistor') this.amps[i] = this.across(part.a, part.b) / Math.max(part.ohms, leastOhms);
      else if (part.kind === 'pullUp')
        this.amps[i] = (part.spec.volts - this.across(part.node, part.reference)) / Math.max(part.spec.ohms, leastOhms);
      else if (part.kind === 'load')
        this.amps[i] = this.isCurrent(i, part)
          ? (this.drawn[i] as number)
          : (this.used[i] as number) * this.across(part.plus, part.minus);
      else this.amps[i] = this.supplyAmps(i, part);
    });
  }

  private supplyAmps(i: number, part: SupplyPart): number {
    const mode = this.modes.get(i);
    if (mode === 'off') return 0;
    if (mode === 'limiting') return part.spec.peakAmps;
    return (part.spec.volts - this.across(part.plus, part.minus)) / Math.max(part.spec.sourceOhms, leastOhms);
  }
}
