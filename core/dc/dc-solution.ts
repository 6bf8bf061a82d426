import type { ActorStates } from '../circuit/circuit.ts';
import type { Reads } from '../circuit/reads.ts';
import type { Block } from './block.ts';
import type { BlockForest } from './block-forest.ts';
import type { SupplyMode } from './devices/supply.ts';
import type { BlockSolution } from './network-solver.ts';

/** How a circuit falls into blocks. */
export interface DcLayout {
  readonly blocks: readonly Block[];
  readonly forest: BlockForest;
  /** Of each part its block, and its number there. */
  readonly blockOf: Int32Array;
  readonly placeOf: Int32Array;
  readonly reads: Reads;
}

/** The states of all blocks with these actors on and these parts open; each is solved when it is asked for. */
export class BlockStates {
  private readonly known: (BlockSolution | undefined)[];

  /** Neither `on` nor `open` may be changed any more. */
  constructor(
    private readonly blocks: readonly Block[],
    private readonly on: ActorStates,
    private readonly open: ReadonlySet<number>,
  ) {
    this.known = new Array<BlockSolution | undefined>(blocks.length);
  }

  at(block: number): BlockSolution {
    const known = this.known[block];
    if (known) return known;
    const solved = (this.blocks[block] as Block).solve(this.on, this.open);
    this.known[block] = solved;
    return solved;
  }
}

/** What stands on every node and flows in every part; worked out for the whole circuit only where it is asked for. */
export class DcSolution {
  private whole: { volts: Float64Array; island: Int32Array } | null = null;
  private flow: { amps: Float64Array; modes: Map<number, SupplyMode> } | null = null;

  constructor(
    private readonly layout: DcLayout,
    /** By block; the same object wherever the block is in the same state. */
    readonly base: BlockStates,
    /** Blocks that are in another state than in `base`. */
    readonly changed: ReadonlyMap<number, BlockSolution> = new Map(),
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
    return this.layout.blocks.every((_, block) => (this.changed.get(block) ?? this.base.at(block)).settled);
  }

  /** The state of a block. */
  at(block: number): BlockSolution {
    this.layout.reads.note('block', block);
    return this.changed.get(block) ?? this.base.at(block);
  }

  /** Volts of one node against another; null where nothing joins them so that any voltage could stand there. */
  between(a: number, b: number): number | null {
    const { forest, reads } = this.layout;
    // What nothing joins stays so until something comes to the smaller piece.
    const apart = reads.isWanted ? forest.smallerApart(a, b) : null;
    if (apart !== null) reads.note('piece', apart);
    return forest.between(a, b, this);
  }

  /** The amperes of one part, counted as in `amps`. */
  ampsIn(part: number): number {
    return this.at(this.blockOf(part)).amps[this.layout.placeOf[part] as number] as number;
  }

  /** What a supply (a part) does; undefined where it is not in force. */
  modeOf(part: number): SupplyMode | undefined {
    return this.at(this.blockOf(part)).modes.get(this.layout.placeOf[part] as number);
  }

  /** The block that a part is in: its amperes and the volts across it depend on nothing else. */
  blockOf(part: number): number {
    const block = this.layout.blockOf[part] as number;
    this.layout.reads.note('block', block);
    return block;
  }

  /** The blocks that a voltage between two nodes is made up of. */
  blocksBetween(a: number, b: number): number[] {
    const blocks = this.layout.forest.blocksBetween(a, b);
    for (const block of blocks) this.layout.reads.note('block', block);
    return blocks;
  }

  private spread() {
    this.whole ??= this.layout.forest.spread(this);
    return this.whole;
  }

  private flows() {
    if (this.flow) return this.flow;
    const { blocks, blockOf } = this.layout;
    const amps = new Float64Array(blockOf.length);
    const modes = new Map<number, SupplyMode>();
    blocks.forEach(({ parts }, b) => {
      const solution = this.at(b);
      for (let i = 0; i < parts.length; i++) amps[parts[i] as number] = solution.amps[i] as number;
      for (const [i, mode] of solution.modes) modes.set(parts[i] as number, mode);
    });
    this.flow = { amps, modes };
    return this.flow;
  }
}
