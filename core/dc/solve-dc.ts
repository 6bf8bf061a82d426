import type { ActorStates, Circuit, CircuitPart } from '../circuit/circuit.ts';
import type { BlockSolution, SupplyMode } from './balance.ts';
import { Block } from './block.ts';
import { endsOf } from './elimination-plan.ts';
import { findBlocks } from './find-blocks.ts';

export type { SupplyMode };

/** Solves one circuit for any of its states. */
export class DcSolver {
  readonly blocks: readonly Block[];
  /** Blocks that look different from state to state. */
  private readonly changing: readonly number[];
  private readonly still: readonly (BlockSolution | null)[];
  private readonly blocksAt: readonly (readonly number[])[];

  constructor(private readonly circuit: Circuit) {
    const { nodes, parts } = circuit;
    const { ends, owner } = edgesOf(parts);
    const found = findBlocks(nodes.length, ends).map((block) => ({ ...block, edges: block.edges.flatMap((e) => (owner[e] === undefined ? [] : [owner[e] as number])) }));
    this.blocks = found.map((block) => new Block(nodes, parts, block));
    this.changing = this.blocks.flatMap((block, i) => (block.actors.length > 0 ? [i] : []));
    const none = new Uint8Array(circuit.actors.length);
    this.still = this.blocks.map((block) => (block.actors.length > 0 ? null : block.solve(none, new Set())));
    const blocksAt: number[][] = nodes.map(() => []);
    this.blocks.forEach((block, i) => {
      for (const node of block.nodes) blocksAt[node]?.push(i);
    });
    this.blocksAt = blocksAt;
  }

  /**
   * The DC state with these actors on. Parts in `open` are taken out (an opened fuse, a pulled plug). Loads draw a
   * constant current, a constant power or what a resistance does, and fade below their drop-out voltage; a supply that
   * limits holds its peak current, one that shuts down goes off. Always an answer: see `settled`.
   */
  solve(on: ActorStates, open: ReadonlySet<number> = new Set()): DcSolution {
    const solutions = [...this.still] as BlockSolution[];
    for (const i of this.changing) solutions[i] = (this.blocks[i] as Block).solve(on, open);
    if (open.size > 0) {
      this.blocks.forEach((block, i) => {
        if (this.still[i] && block.parts.some((part) => open.has(part))) solutions[i] = block.solve(on, open);
      });
    }
    return new DcSolution(this.circuit, this.blocks, this.blocksAt, solutions);
  }
}

/** The graph of a circuit: an edge for each part, and two more that keep a pull-up in one block with what feeds it. */
function edgesOf(parts: readonly CircuitPart[]): { ends: [number, number][]; owner: number[] } {
  const ends = parts.map((part) => [...endsOf(part)] as [number, number]);
  const owner = parts.map((_, i) => i);
  for (const part of parts) {
    if (part.kind === 'pullUp' && part.fedFrom !== null) ends.push([part.fedFrom, part.node], [part.fedFrom, part.reference]);
  }
  return { ends, owner };
}

/** What stands on every node and flows in every part. */
export class DcSolution {
  private whole: { volts: Float64Array; island: Int32Array } | null = null;
  private flow: { amps: Float64Array; modes: Map<number, SupplyMode> } | null = null;

  constructor(
    private readonly circuit: Circuit,
    readonly blocks: readonly Block[],
    private readonly blocksAt: readonly (readonly number[])[],
    /** By block; the same object wherever the block is in the same state. */
    readonly solutions: readonly BlockSolution[],
  ) {}

  /** Volts by node, against the island's reference; only differences within an island mean something. */
  get volts(): Float64Array {
    return this.overall().volts;
  }

  /** By node, the number of the island that it is on: nodes that something in force joins. */
  get island(): Int32Array {
    return this.overall().island;
  }

  /** Amperes by part: a to b in a resistor, plus to minus in a load, out of plus of a supply, out of a pull-up. */
  get amps(): Float64Array {
    return this.flows().amps;
  }

  /** By part, for supplies in force. */
  get modes(): ReadonlyMap<number, SupplyMode> {
    return this.flows().modes;
  }

  /** False where some loads found no balance; the values are then those of the last try. */
  get settled(): boolean {
    return this.solutions.every((s) => s.settled);
  }

  /** Volts of one node against another; null where nothing joins them so that any voltage could stand there. */
  between(a: number, b: number): number | null {
    for (const i of this.blocksAt[a] ?? []) {
      if (!this.blocksAt[b]?.includes(i)) continue;
      const { nodes } = this.blocks[i] as Block;
      const { volts, island } = this.solutions[i] as BlockSolution;
      const [ia, ib] = [nodes.indexOf(a), nodes.indexOf(b)];
      if (island[ia] === island[ib]) return (volts[ia] as number) - (volts[ib] as number);
    }
    const { volts, island } = this.overall();
    return island[a] === island[b] ? (volts[a] as number) - (volts[b] as number) : null;
  }

  private flows() {
    if (this.flow) return this.flow;
    const amps = new Float64Array(this.circuit.parts.length);
    const modes = new Map<number, SupplyMode>();
    this.blocks.forEach(({ parts }, b) => {
      const solution = this.solutions[b] as BlockSolution;
      for (let i = 0; i < parts.length; i++) amps[parts[i] as number] = solution.amps[i] as number;
      for (const [i, mode] of solution.modes) modes.set(parts[i] as number, mode);
    });
    this.flow = { amps, modes };
    return this.flow;
  }

  /** Voltages of all blocks in one scale: walked from node to node through the blocks that share it. */
  private overall() {
    if (this.whole) return this.whole;
    const size = this.circuit.nodes.length;
    const volts = new Float64Array(size);
    const island = new Int32Array(size).fill(-1);
    const done = this.solutions.map((s) => new Uint8Array(s.island.length));
    for (const start of this.starts()) {
      if (island[start] !== -1) continue;
      island[start] = start;
      const open = [start];
      for (let node = open.pop(); node !== undefined; node = open.pop()) {
        for (const b of this.blocksAt[node] ?? []) {
          const { nodes } = this.blocks[b] as Block;
          const solution = this.solutions[b] as BlockSolution;
          const here = nodes.indexOf(node);
          const local = solution.island[here] as number;
          if (done[b]?.[local] === 1) continue;
          (done[b] as Uint8Array)[local] = 1;
          const shift = (volts[node] as number) - (solution.volts[here] as number);
          nodes.forEach((other, i) => {
            if (solution.island[i] !== local || island[other] !== -1) return;
            volts[other] = (solution.volts[i] as number) + shift;
            island[other] = start;
            open.push(other);
          });
        }
      }
    }
    this.whole = { volts, island };
    return this.whole;
  }

  /** Where the scales begin: a supply's minus is 0 V where there is one, a chassis else. */
  private *starts(): Generator<number> {
    const { parts, nodes } = this.circuit;
    for (const part of parts) if (part.kind === 'supply') yield part.minus;
    for (let node = 0; node < nodes.length; node++) if (nodes[node]?.endsWith('.chassis')) yield node;
    for (let node = 0; node < nodes.length; node++) yield node;
  }
}
