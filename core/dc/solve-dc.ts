import type { ActorStates, Circuit, CircuitPart } from '../circuit/circuit.ts';
import type { BlockSolution } from './balance.ts';
import { Block } from './block.ts';
import { BlockForest } from './block-forest.ts';
import type { SupplyMode } from './devices/supply.ts';
import { endsOf } from './elimination-plan.ts';
import { findBlocks } from './find-blocks.ts';

export type { SupplyMode };

/** Solves one circuit for any of its states. */
export class DcSolver {
  private readonly blocks: readonly Block[];
  private readonly forest: BlockForest;
  /** Blocks that look different from state to state. */
  private readonly changing: readonly number[];
  /** What the others always look like. */
  private readonly still: readonly (BlockSolution | null)[];

  constructor(private readonly circuit: Circuit) {
    const { nodes, parts } = circuit;
    this.blocks = findBlocks(nodes.length, edgesOf(parts)).map(
      (block) => new Block(nodes, parts, { ...block, edges: block.edges.filter((edge) => edge < parts.length) }),
    );
    this.forest = new BlockForest(nodes.length, this.blocks, zeros(circuit));
    this.changing = this.blocks.flatMap((block, i) => (block.actors.length > 0 ? [i] : []));
    const none = new Uint8Array(circuit.actors.length);
    this.still = this.blocks.map((block) => (block.actors.length > 0 ? null : block.solve(none, new Set())));
  }

  /** Actors on which the voltage between two nodes depends. */
  actorsBetween(a: number, b: number): number[] {
    return this.forest.blocksBetween(a, b).flatMap((block) => this.blocks[block]?.actors ?? []);
  }

  /** Actors on which the current in a part depends. */
  actorsOf(part: number): readonly number[] {
    return this.blocks.find((block) => block.parts.includes(part))?.actors ?? [];
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
    return new DcSolution(this.circuit, this.blocks, this.forest, solutions);
  }
}

/**
 * The graph of a circuit: an edge for each part; after them more that keep in one block what pays for each other, a
 * pull-up and the plus that feeds it, the two halves of a converter.
 */
function edgesOf(parts: readonly CircuitPart[]): (readonly [number, number])[] {
  const feeds = parts.flatMap((part): [number, number][] => {
    if (part.kind === 'pullUp' && part.fedFrom !== null)
      return [
        [part.fedFrom, part.node],
        [part.fedFrom, part.reference],
      ];
    if (part.kind !== 'load' || !part.converter) return [];
    const output = parts.find((p) => p.kind === 'supply' && p.converter?.name === part.converter?.name);
    return output?.kind === 'supply'
      ? [
          [part.plus, output.plus],
          [part.plus, output.minus],
          [part.minus, output.minus],
        ]
      : [];
  });
  return [...parts.map(endsOf), ...feeds];
}

/** Where voltages count from: a supply's minus is 0 V where there is one, a chassis else. */
function* zeros({ parts, nodes }: Circuit): Generator<number> {
  for (const part of parts) if (part.kind === 'supply') yield part.minus;
  for (let node = 0; node < nodes.length; node++) if (nodes[node]?.endsWith('.chassis')) yield node;
}

/** What stands on every node and flows in every part; worked out for the whole circuit only where it is asked for. */
export class DcSolution {
  private whole: { volts: Float64Array; island: Int32Array } | null = null;
  private flow: { amps: Float64Array; modes: Map<number, SupplyMode> } | null = null;

  constructor(
    private readonly circuit: Circuit,
    private readonly blocks: readonly Block[],
    private readonly forest: BlockForest,
    /** By block; the same object wherever the block is in the same state. */
    private readonly solutions: readonly BlockSolution[],
  ) {}

  /** Volts by node, against the island's zero; only differences within an island mean something. */
  get volts(): Float64Array {
    return this.spread().volts;
  }

  /** By node, the island that it is on: nodes that something in force joins. */
  get island(): Int32Array {
    return this.spread().island;
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
    return this.forest.between(a, b, this.solutions);
  }

  private spread() {
    this.whole ??= this.forest.spread(this.solutions);
    return this.whole;
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
}
