import {
  type ActorStates,
  type CircuitPart,
  type Gate,
  isOpenGate,
  type PullUpPart,
  type SupplyPart,
} from '../circuit/circuit.ts';
import { renumberPart } from '../circuit/renumber.ts';
import { type BlockSolution, type NetworkShape, NetworkSolver, shapeOf } from './balance.ts';
import type { GraphBlock } from './find-blocks.ts';
import type { Network } from './islands.ts';

/** A block of the circuit with its own numbering, solved once for each state that it is met in. */
export class Block {
  /** The circuit's numbers of its nodes and parts. */
  readonly nodes: readonly number[];
  readonly parts: readonly number[];
  /** Actors on which its parts depend. */
  readonly actors: readonly number[];
  private known: Map<string, BlockSolution> | null = null;
  private solver: NetworkSolver | null = null;
  private shape: NetworkShape | null = null;
  /** What a lone source in force looks like. */
  private inForce: BlockSolution | null = null;

  /** `names` and `all` are the circuit's nodes and parts. */
  constructor(
    private readonly names: readonly string[],
    private readonly all: readonly CircuitPart[],
    block: GraphBlock,
    /** The block of a circuit that joins the same: its shape serves here too. */
    private readonly alike: Block | null = null,
  ) {
    this.nodes = block.nodes;
    this.parts = block.edges;
    this.actors = actorsIn(block.edges, all);
  }

  /** The block in a circuit that joins the same; itself where nothing in it differs. */
  withParts(all: readonly CircuitPart[]): Block {
    if (this.parts.every((part) => all[part] === this.all[part])) return this;
    return new Block(this.names, all, { nodes: this.nodes, edges: this.parts }, this);
  }

  /** The block with these actors on and these parts (the circuit's numbers) open; the same object for the same state. */
  solve(on: ActorStates, open: ReadonlySet<number>): BlockSolution {
    const [first] = this.parts;
    const single =
      first !== undefined && this.parts.length === 1 && this.nodes.length <= 2 ? this.all[first] : undefined;
    if (single) return this.solveSingle(single, isOpenGate(single.gate, on) && !open.has(first as number));
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    if (open.size > 0) for (const part of this.parts) if (open.has(part)) key += `,${part}`;
    this.known ??= new Map();
    const known = this.known.get(key);
    if (known) return known;
    const own = new Set(open.size > 0 ? this.parts.flatMap((part, i) => (open.has(part) ? [i] : [])) : []);
    const solution = this.whole().solve(on, own);
    this.known.set(key, solution);
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

  private whole(): NetworkSolver {
    if (this.solver) return this.solver;
    const network = this.renumbered();
    this.solver = new NetworkSolver(network, this.shapeAs(network));
    return this.solver;
  }

  private shapeAs(network: Network): NetworkShape {
    this.shape ??= this.alike?.shapeAs(network) ?? shapeOf(network);
    return this.shape;
  }

  private renumbered(): Network {
    const numberOf = new Map(this.nodes.map((node, i) => [node, i]));
    const parts = this.parts.map((i) => renumberPart(this.all[i] as CircuitPart, (node) => numberOf.get(node) ?? 0));
    return { nodes: this.nodes.map((node) => this.names[node] ?? ''), parts };
  }
}

const none: readonly number[] = [];

function actorsIn(parts: readonly number[], all: readonly CircuitPart[]): readonly number[] {
  let actors: Set<number> | null = null;
  for (const i of parts) {
    for (const gate of gatesOf(all[i] as CircuitPart)) {
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
