import { type ActorStates, type CircuitPart, isOpenGate, type Resistor } from '../circuit/circuit.ts';
import { leastOhms } from '../quantity/least-ohms.ts';
import type { Across, Device, Surroundings } from './devices/device.ts';
import { Diode } from './devices/diode.ts';
import { Load } from './devices/load.ts';
import { PullUp, PullUpFeed } from './devices/pull-up.ts';
import { Supply, type SupplyMode } from './devices/supply.ts';
import { type EarlyMesh, Elimination } from './elimination.ts';
import { type EliminationPlan, type Ends, endsOf, planElimination } from './elimination-plan.ts';
import { IslandFinder, type Islands, type Network } from './islands.ts';

/** What stands on the nodes and flows in the parts of one block; indices are the block's own. */
export interface BlockSolution {
  /** Volts by node, against the island's reference; only differences within an island mean something. */
  readonly volts: Float64Array;
  readonly island: Int32Array;
  /** Amperes by part: a to b in a resistor, plus to minus in a load, out of plus of a supply, out of a pull-up. */
  readonly amps: Float64Array;
  /** By part, for supplies. */
  readonly modes: ReadonlyMap<number, SupplyMode>;
  /** False where the devices found no balance; the values are then those of the last try. */
  readonly settled: boolean;
}

const mostRounds = 400;

/** What of a network stays the same whatever its figures are. */
export interface NetworkShape {
  readonly ends: Ends;
  /** By part, whether it conducts alike in every state. */
  readonly constant: readonly boolean[];
  readonly plan: EliminationPlan;
}

export function shapeOf({ nodes, parts }: Network): NetworkShape {
  const ends = parts.map(endsOf);
  const constant = parts.map(isConstant);
  const changing = parts.flatMap((part, i) => {
    if (constant[i]) return [];
    const fedFrom = part.kind === 'pullUp' && part.fedFrom !== null ? [part.fedFrom] : [];
    return [...(ends[i] ?? []), ...fedFrom];
  });
  return { ends, constant, plan: planElimination(nodes.length, ends, new Set(changing)) };
}

/** Whether the shape of a network that joins the same serves this one too: an actor may move what nothing moved there. */
export const fitsShape = ({ parts }: Network, { constant }: NetworkShape): boolean =>
  parts.every((part, i) => isConstant(part) === constant[i]);

/** Whether a part conducts alike in every state. */
const isConstant = (part: CircuitPart): part is Resistor => part.kind === 'resistor' && part.gate.length === 0;

/** Solves one network for any of its states; keeps its working arrays between calls. */
export class NetworkSolver {
  private readonly plan: EliminationPlan;
  private readonly elimination: Elimination;
  private readonly islands: IslandFinder;
  /** What is left after the elimination of what never changes, by the nodes that are references. */
  private readonly early = new Map<string, EarlyMesh>();
  /** The resistors (parts) that not every state has. */
  private readonly gated: readonly number[];

  constructor(
    private readonly network: Network,
    { ends, plan }: NetworkShape,
  ) {
    this.plan = plan;
    this.gated = network.parts.flatMap((p, i) => (p.kind === 'resistor' && !isConstant(p) ? [i] : []));
    this.elimination = new Elimination(plan);
    this.islands = new IslandFinder(network, ends);
  }

  /** The state with these actors on and the parts in `open` (its own indices) taken out. */
  solve(on: ActorStates, open: ReadonlySet<number>): BlockSolution {
    const islands = this.islands.find(on, open);
    const devices = makeDevices(this.network, islands, on);
    const mesh = this.eliminateConstant(islands, open);
    const volts = new Float64Array(this.network.nodes.length);
    const across: Across = (a, b) => (volts[a] as number) - (volts[b] as number);
    const into = new Float64Array(volts.length);
    let settled = false;
    let stale = true;
    for (let round = 0; round < mostRounds && !settled; round++) {
      if (stale) this.assemble(islands, devices, mesh);
      inject(devices, islands, into);
      this.elimination.solveLate(into, volts);
      stale = false;
      let error = 0;
      for (const { device } of devices) {
        const revision = device.revise(across);
        stale = stale || revision.stale;
        error = Math.max(error, revision.error);
      }
      settled = !stale && error < 1e-12;
    }
    this.elimination.solveEarly(volts);
    return {
      volts,
      island: islands.of,
      amps: this.readAmps(islands, devices, across),
      modes: modesOf(devices),
      settled,
    };
  }

  private assemble(islands: Islands, devices: readonly Placed[], mesh: EarlyMesh) {
    const { parts } = this.network;
    this.elimination.restore(mesh);
    for (const i of this.gated) {
      const part = parts[i] as Resistor;
      if (islands.inForce[i] === 1) this.putResistor(i, part, islands);
    }
    for (const { part, device } of devices)
      if (part >= 0) this.put(part, device.from, device.to, device.conductance(), islands);
    this.elimination.factorLate();
  }

  /** What is left where nothing changes; once for the same references, as long as no part is open. */
  private eliminateConstant(islands: Islands, open: ReadonlySet<number>): EarlyMesh {
    const key = open.size === 0 ? islands.reference.join('') : '';
    const known = this.early.get(key);
    if (known && open.size === 0) return known;
    this.elimination.clear();
    this.network.parts.forEach((part, i) => {
      if (isConstant(part) && islands.inForce[i] === 1) this.putResistor(i, part, islands);
    });
    const mesh = this.elimination.factorEarly();
    if (open.size === 0) this.early.set(key, mesh);
    return mesh;
  }

  private putResistor(i: number, { a, b, ohms }: Resistor, islands: Islands) {
    this.put(i, a, b, 1 / Math.max(ohms, leastOhms), islands);
  }

  private put(part: number, a: number, b: number, siemens: number, { reference }: Islands) {
    const slot = this.plan.partSlot[part] as number;
    if (slot < 0) return;
    const { toReference, between } = this.elimination;
    if (reference[a] === 1) toReference[b] = (toReference[b] as number) + siemens;
    else if (reference[b] === 1) toReference[a] = (toReference[a] as number) + siemens;
    else between[slot] = (between[slot] as number) + siemens;
  }

  private readAmps(islands: Islands, devices: readonly Placed[], across: Across): Float64Array {
    const amps = new Float64Array(this.network.parts.length);
    this.network.parts.forEach((part, i) => {
      if (part.kind === 'resistor' && islands.inForce[i] === 1)
        amps[i] = across(part.a, part.b) / Math.max(part.ohms, leastOhms);
    });
    for (const { part, device } of devices) if (part >= 0) amps[part] = device.amps(across);
    return amps;
  }
}

/** A device and its part; -1 for one that belongs to another's part and has no place in the matrix. */
interface Placed {
  readonly part: number;
  readonly device: Device;
}

function makeDevices({ parts }: Network, islands: Islands, on: ActorStates): Placed[] {
  const around: Surroundings = { island: islands.of, limited: new Set() };
  const placed: Placed[] = [];
  const inputs = new Map<string, Load>();
  parts.forEach((part, i) => {
    if (islands.inForce[i] === 0) return;
    if (part.kind === 'load') {
      const load = new Load(part, part.states.find((s) => isOpenGate(s.gate, on))?.amount ?? part.spec.amount, around);
      if (part.converter) inputs.set(part.converter.name, load);
      placed.push({ part: i, device: load });
    } else if (part.kind === 'supply') placed.push({ part: i, device: new Supply(part, around) });
    else if (part.kind === 'diode') placed.push({ part: i, device: new Diode(part) });
    else if (part.kind === 'pullUp') {
      const pullUp = new PullUp(part);
      placed.push({ part: i, device: pullUp });
      const fed = part.fedFrom !== null && islands.of[part.fedFrom] === islands.of[part.node];
      if (fed && part.fedFrom !== null) placed.push({ part: -1, device: new PullUpFeed(part.fedFrom, pullUp) });
    }
  });
  for (const { part, device } of placed) {
    const of = parts[part];
    if (device instanceof Supply && of?.kind === 'supply' && of.converter)
      device.input = inputs.get(of.converter.name) ?? null;
  }
  return placed;
}

function inject(devices: readonly Placed[], { reference }: Islands, into: Float64Array) {
  into.fill(0);
  for (const { device } of devices) {
    const amps = device.extra();
    into[device.from] = (into[device.from] as number) - amps;
    into[device.to] = (into[device.to] as number) + amps;
  }
  for (let node = 0; node < into.length; node++) if (reference[node] === 1) into[node] = 0;
}

const modesOf = (devices: readonly Placed[]): Map<number, SupplyMode> =>
  new Map(
    devices.flatMap(({ part, device }): [number, SupplyMode][] =>
      device instanceof Supply ? [[part, device.mode]] : [],
    ),
  );
