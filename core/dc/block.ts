import { type ActorStates, type CircuitPart, type Gate, isOpenGate } from '../circuit/circuit.ts';
import { type BlockSolution, NetworkSolver } from './balance.ts';
import { endsOf } from './elimination-plan.ts';
import type { GraphBlock } from './find-blocks.ts';

/** A block of the circuit with its own numbering, solved once for each state that it is met in. */
export class Block {
  /** The circuit's numbers of its nodes and parts. */
  readonly nodes: readonly number[];
  readonly parts: readonly number[];
  /** Actors on which its parts depend. */
  readonly actors: readonly number[];
  private readonly local: readonly CircuitPart[];
  private readonly names: readonly string[];
  private readonly known = new Map<string, BlockSolution>();
  private solver: NetworkSolver | null = null;

  constructor(names: readonly string[], parts: readonly CircuitPart[], block: GraphBlock) {
    this.nodes = block.nodes;
    this.parts = block.edges;
    const numberOf = new Map(block.nodes.map((node, i) => [node, i]));
    this.names = block.nodes.map((node) => names[node] ?? '');
    this.local = block.edges.map((i) => renumber(parts[i] as CircuitPart, (node) => numberOf.get(node) ?? 0));
    this.actors = [...new Set(this.local.flatMap(gatesOf).flatMap((gate) => gate.map((g) => g.actor)))];
  }

  /** The block with these actors on and these parts (the circuit's numbers) open; the same object for the same state. */
  solve(on: ActorStates, open: ReadonlySet<number>): BlockSolution {
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    if (open.size > 0) for (const part of this.parts) if (open.has(part)) key += `,${part}`;
    const known = this.known.get(key);
    if (known) return known;
    const own = new Set(open.size > 0 ? this.parts.flatMap((part, i) => (open.has(part) ? [i] : [])) : []);
    const [single] = this.local;
    const solution =
      single && this.local.length === 1
        ? solveBridge(single, isOpenGate(single.gate, on) && own.size === 0)
        : this.whole().solve(on, own);
    this.known.set(key, solution);
    return solution;
  }

  private whole(): NetworkSolver {
    this.solver ??= new NetworkSolver({ nodes: this.names, parts: this.local });
    return this.solver;
  }
}

function gatesOf(part: CircuitPart): Gate[] {
  return part.kind === 'load' ? [part.gate, ...part.states.map((s) => s.gate)] : [part.gate];
}

function renumber(part: CircuitPart, number: (node: number) => number): CircuitPart {
  switch (part.kind) {
    case 'resistor':
      return { ...part, a: number(part.a), b: number(part.b) };
    case 'pullUp': {
      const fedFrom = part.fedFrom === null ? null : number(part.fedFrom);
      return { ...part, node: number(part.node), reference: number(part.reference), fedFrom };
    }
    case 'diode':
      return { ...part, anode: number(part.anode), cathode: number(part.cathode) };
    default:
      return { ...part, plus: number(part.plus), minus: number(part.minus) };
  }
}

/** A part that nothing else joins the two ends of: no current can flow, so its voltage is known without solving. */
function solveBridge(part: CircuitPart, inForce: boolean): BlockSolution {
  const [a, b] = endsOf(part);
  const volts = new Float64Array(a === b ? 1 : 2);
  if (inForce && a !== b && (part.kind === 'supply' || part.kind === 'pullUp')) volts[a] = part.spec.volts;
  const island = Int32Array.from(volts, (_, i) => (inForce ? 0 : i));
  const modes: BlockSolution['modes'] = new Map(part.kind === 'supply' && inForce ? [[0, 'regulating']] : []);
  return { volts, island, amps: new Float64Array(1), modes, settled: true };
}
