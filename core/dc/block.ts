import {
  type ActorStates,
  type CircuitPart,
  type Gate,
  isOpenGate,
  type PullUpPart,
  type SupplyPart,
} from '../circuit/circuit.ts';
import { renumberPart } from '../circuit/renumber-part.ts';
import type { Network } from './islands.ts';
import { type BlockSolution, fitsShape, type NetworkShape, NetworkSolver, shapeOf } from './network-solver.ts';

/** What has been found out about a block, in its own numbering. */
interface Memory {
  readonly known: Map<string, BlockSolution>;
  /** What was found where some of its parts were others: a state that is the same but for rounding is the same state. */
  readonly earlier: ReadonlyMap<string, BlockSolution> | null;
  solver: NetworkSolver | null;
  shape: NetworkShape | null;
}

/** A block of the circuit with its own numbering, solved once for each state that it is met in. */
export class Block {
  /** Actors on which its parts depend. */
  readonly actors: readonly number[];
  /** The same object for blocks that differ in their numbers only. */
  readonly content: object;
  /** What a lone source in force looks like. */
  private inForce: BlockSolution | null = null;
  private memory: Memory | null;

  constructor(
    /** The circuit's numbers of its nodes and parts. */
    readonly nodes: readonly number[],
    readonly parts: readonly number[],
    /** The names of these nodes, and the parts. */
    private readonly names: readonly string[],
    private readonly own: readonly CircuitPart[],
    /** One of which all is the same but for the numbers, or the figures of some parts. */
    twin: { readonly block: Block; readonly same: boolean } | null = null,
  ) {
    this.actors = twin?.same ? twin.block.actors : actorsIn(own);
    this.content = twin?.same ? twin.block.content : {};
    const known = twin?.block.memory;
    this.memory = known ? memoryOf(known, twin.same) : null;
    if (twin?.same) this.inForce = twin.block.inForce;
  }

  /** The block in a circuit that joins the same; itself where nothing in it differs. */
  withParts(all: readonly CircuitPart[]): Block {
    if (this.parts.every((part, i) => all[part] === this.own[i])) return this;
    const own = this.parts.map((part) => all[part] as CircuitPart);
    return new Block(this.nodes, this.parts, this.names, own, { block: this, same: false });
  }

  /** The same block where a circuit has other numbers for its nodes and parts. */
  at(nodes: readonly number[], parts: readonly number[], all: readonly CircuitPart[]): Block {
    const own = parts.map((part) => all[part] as CircuitPart);
    return new Block(nodes, parts, this.names, own, { block: this, same: true });
  }

  /** The block with these actors on and these parts (the circuit's numbers) open; the same object for the same state. */
  solve(on: ActorStates, open: ReadonlySet<number>): BlockSolution {
    const [first] = this.own;
    const isSingle = first !== undefined && this.own.length === 1 && this.nodes.length <= 2;
    if (isSingle) return this.solveSingle(first, isOpenGate(first.gate, on) && !open.has(this.parts[0] as number));
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    const out = new Set(open.size > 0 ? this.parts.flatMap((part, i) => (open.has(part) ? [i] : [])) : []);
    for (const part of out) key += `,${part}`;
    this.memory ??= { known: new Map(), earlier: null, solver: null, shape: null };
    const { known, earlier } = this.memory;
    const found = known.get(key);
    if (found) return found;
    const before = earlier?.get(key);
    const anew = this.whole(this.memory).solve(on, out);
    const solution = before && agree(before, anew) ? before : anew;
    known.set(key, solution);
    return solution;
  }

  /** A part that nothing else joins the two ends of: no current can flow, so its voltage is known without solving. */
  private solveSingle(part: CircuitPart, inForce: boolean): BlockSolution {
    if (this.nodes.length === 1) return loop;
    if (!inForce) return apart;
    if (part.kind !== 'supply' && part.kind !== 'pullUp') return joined;
    this.inForce ??= solveSource(part);
    return this.inForce;
  }

  private whole(memory: Memory): NetworkSolver {
    if (memory.solver) return memory.solver;
    const network = this.renumbered();
    if (!memory.shape || !fitsShape(network, memory.shape)) memory.shape = shapeOf(network);
    memory.solver = new NetworkSolver(network, memory.shape);
    return memory.solver;
  }

  private renumbered(): Network {
    const numberOf = new Map(this.nodes.map((node, i) => [node, i]));
    const parts = this.own.map((part) => renumberPart(part, (node) => numberOf.get(node) ?? 0));
    return { nodes: this.names, parts };
  }
}

/** What is known of a block whose parts are the same, or only join the same. */
const memoryOf = (memory: Memory, same: boolean): Memory =>
  same ? memory : { known: new Map(), earlier: memory.known, solver: null, shape: memory.shape };

/** Far below what any figure is known to, and above what rounding does. */
const sameShare = 1e-11;
const sameAmount = 1e-13;

const isSame = (a: number, b: number): boolean =>
  Math.abs(a - b) <= sameAmount + sameShare * Math.max(Math.abs(a), Math.abs(b));

/** Whether two solutions are the same but for rounding. */
function agree(a: BlockSolution, b: BlockSolution): boolean {
  return (
    a.settled === b.settled &&
    a.modes.size === b.modes.size &&
    [...a.modes].every(([part, mode]) => b.modes.get(part) === mode) &&
    a.island.every((island, i) => island === b.island[i]) &&
    a.volts.every((volts, i) => isSame(volts, b.volts[i] as number)) &&
    a.amps.every((amps, i) => isSame(amps, b.amps[i] as number))
  );
}

const none: readonly number[] = [];

function actorsIn(parts: readonly CircuitPart[]): readonly number[] {
  let actors: Set<number> | null = null;
  for (const part of parts) {
    for (const gate of gatesOf(part)) {
      for (const { actor } of gate) {
        actors ??= new Set();
        actors.add(actor);
      }
    }
  }
  return actors ? [...actors] : none;
}

const gatesOf = (part: CircuitPart): readonly Gate[] =>
  part.kind === 'load' ? [part.gate, ...part.states.map((s) => s.gate)] : [part.gate];

/** Two nodes that are joined without a current, two that are not, and one node alone. */
const joined = still([0, 0]);
const apart = still([0, 1]);
const loop = still([0]);

function still(islands: readonly number[]): BlockSolution {
  const volts = new Float64Array(islands.length);
  return { volts, island: Int32Array.from(islands), amps: new Float64Array(1), modes: new Map(), settled: true };
}

function solveSource(part: SupplyPart | PullUpPart): BlockSolution {
  const modes: BlockSolution['modes'] = new Map(part.kind === 'supply' ? [[0, 'regulating']] : []);
  return { ...joined, volts: Float64Array.of(part.spec.volts, 0), modes };
}
