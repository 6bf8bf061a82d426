import type { ActorStates, Circuit, CircuitPart } from '../circuit/circuit.ts';
import { partsBefore } from '../circuit/parts-before.ts';
import { Block } from './block.ts';
import { BlockForest } from './block-forest.ts';
import { BlockStates, type DcLayout, DcSolution } from './dc-solution.ts';
import { endsOf } from './elimination-plan.ts';
import { findBlocks } from './find-blocks.ts';
import type { BlockSolution } from './network-solver.ts';

/** Solves one circuit for any of its states. */
export class DcSolver {
  /** Of each actor the blocks that depend on it, once they are asked for. */
  private blocksOfActor: readonly (readonly number[])[] | null = null;
  private blockOfContent: ReadonlyMap<object, number> | null = null;

  /** `layout` is that of a circuit of the same shape, whose blocks serve where they are the same. */
  constructor(
    private readonly circuit: Circuit,
    private readonly layout: DcLayout = layOut(circuit),
  ) {}

  /**
   * The solver of another circuit. Where that has the same parts between the same nodes, only blocks are solved anew in
   * which a part is another object than here; in any other, those whose fragments are not all in this one.
   */
  solverOf(circuit: Circuit): DcSolver {
    if (!joinsTheSame(this.circuit, circuit))
      return new DcSolver(circuit, layOut(circuit, { circuit: this.circuit, layout: this.layout }));
    const blocks = this.layout.blocks.map((block) => block.withParts(circuit.parts));
    return new DcSolver(circuit, { ...this.layout, blocks, reads: circuit.reads });
  }

  /** How many blocks there are, and the block of a part. */
  get blocks(): number {
    return this.layout.blocks.length;
  }

  blockOf(part: number): number {
    return this.layout.blockOf[part] ?? -1;
  }

  /** Whether its blocks are of the same parts, by the same numbers. */
  hasLayoutOf(other: DcSolver): boolean {
    return this.layout.blockOf === other.layout.blockOf;
  }

  /** The parts of a block, by the circuit's numbers. */
  partsOf(block: number): readonly number[] {
    return this.layout.blocks[block]?.parts ?? [];
  }

  /** The piece that a node is in: the nodes that any parts join; named by one of them. */
  pieceOf(node: number): number {
    return this.layout.forest.pieceOf(node);
  }

  /** The blocks that a voltage between two nodes is made up of. */
  blocksBetween(a: number, b: number): number[] {
    return this.layout.forest.blocksBetween(a, b);
  }

  /** The actors on which a block depends. */
  actorsIn(block: number): readonly number[] {
    return this.layout.blocks[block]?.actors ?? [];
  }

  /** What a block is worked out from: the same object where it is the same in another solver. */
  contentOf(block: number): object | undefined {
    return this.layout.blocks[block]?.content;
  }

  /** The block that has this content; -1 where none has. */
  blockWith(content: object): number {
    this.blockOfContent ??= new Map(this.layout.blocks.map((block, b) => [block.content, b]));
    return this.blockOfContent.get(content) ?? -1;
  }

  /** The blocks that depend on any of these actors. */
  blocksOf(actors: readonly number[]): number[] {
    this.blocksOfActor ??= this.listBlocksOfActors();
    const blocks = new Set<number>();
    for (const actor of actors) for (const block of this.blocksOfActor[actor] ?? []) blocks.add(block);
    return [...blocks];
  }

  private listBlocksOfActors(): number[][] {
    const blocksOfActor: number[][] = this.circuit.actors.map(() => []);
    this.layout.blocks.forEach(({ actors }, b) => {
      for (const actor of actors) blocksOfActor[actor]?.push(b);
    });
    return blocksOfActor;
  }

  /**
   * The DC state with these actors on. Parts in `open` are taken out (an opened fuse, a pulled plug). Loads draw a
   * constant current, a constant power or what a resistance does, and fade below their drop-out voltage; a supply that
   * limits holds its peak current, one that shuts down goes off. Always an answer: see `settled`.
   */
  solve(on: ActorStates, open: ReadonlySet<number> = new Set()): DcSolution {
    return new DcSolution(this.layout, new BlockStates(this.layout.blocks, on.slice(), new Set(open)));
  }

  /** A state of which the blocks are known: as in `earlier`, but for these. */
  solutionFrom(earlier: DcSolution, changed: ReadonlyMap<number, BlockSolution>): DcSolution {
    return new DcSolution(this.layout, earlier.base, changed);
  }

  /** The same where all is as in an earlier state (with the same parts open) but for these blocks. */
  solveFrom(earlier: DcSolution, blocks: readonly number[], on: ActorStates, open: ReadonlySet<number>): DcSolution {
    const changed = new Map<number, BlockSolution>();
    for (const b of blocks) {
      const solution = (this.layout.blocks[b] as Block).solve(on, open);
      if (solution !== earlier.base.at(b)) changed.set(b, solution);
    }
    return new DcSolution(this.layout, earlier.base, changed);
  }
}

interface Earlier {
  readonly circuit: Circuit;
  readonly layout: DcLayout;
}

function layOut(circuit: Circuit, earlier: Earlier | null = null): DcLayout {
  const { nodes, parts } = circuit;
  const isPart = (edge: number) => edge < parts.length;
  const known = earlier ? new KnownBlocks(circuit, earlier) : null;
  const blocks = findBlocks(nodes.length, edgesOf(parts)).map(({ edges, nodes: here }) => {
    const own = edges.every(isPart) ? edges : edges.filter(isPart);
    const names = here.map((node) => nodes[node] ?? '');
    return (
      known?.find(here, own) ??
      new Block(
        here,
        own,
        names,
        own.map((part) => parts[part] as CircuitPart),
      )
    );
  });
  const blockOf = new Int32Array(parts.length);
  const placeOf = new Int32Array(parts.length);
  blocks.forEach((block, b) => {
    block.parts.forEach((part, place) => {
      blockOf[part] = b;
      placeOf[part] = place;
    });
  });
  const forest = new BlockForest(nodes.length, blocks, zeros(circuit));
  return { blocks, forest, blockOf, placeOf, reads: circuit.reads };
}

/** The blocks of an earlier circuit, found by the numbers of another one that shares fragments with it. */
class KnownBlocks {
  private readonly partBefore: Int32Array;

  constructor(
    private readonly circuit: Circuit,
    private readonly earlier: Earlier,
  ) {
    this.partBefore = partsBefore(circuit, earlier.circuit);
  }

  /** The block of these parts, if they were all of one there, in the same order. */
  find(nodes: readonly number[], parts: readonly number[]): Block | null {
    const { layout } = this.earlier;
    const before = this.partBefore[parts[0] ?? -1] ?? -1;
    if (before < 0) return null;
    const block = layout.blocks[layout.blockOf[before] as number] as Block;
    if (block.parts.length !== parts.length || block.nodes.length !== nodes.length) return null;
    for (let i = 0; i < parts.length; i++) if (this.partBefore[parts[i] as number] !== block.parts[i]) return null;
    const isThere = block.parts.every((part, i) => part === parts[i]) && block.nodes.every((n, i) => n === nodes[i]);
    return isThere ? block.withParts(this.circuit.parts) : block.at(nodes, parts, this.circuit.parts);
  }
}

/** Whether the graphs of two circuits are the same. */
const joinsTheSame = (one: Circuit, other: Circuit): boolean =>
  one.nodes.length === other.nodes.length &&
  one.parts.length === other.parts.length &&
  one.parts.every((part, i) => part === other.parts[i] || hasSamePlace(part, other.parts[i] as CircuitPart));

function hasSamePlace(part: CircuitPart, other: CircuitPart): boolean {
  const [[a, b], [otherA, otherB]] = [endsOf(part), endsOf(other)];
  if (part.kind !== other.kind || a !== otherA || b !== otherB) return false;
  if (part.kind === 'pullUp' && other.kind === 'pullUp') return part.fedFrom === other.fedFrom;
  return converterOf(part) === converterOf(other);
}

const converterOf = (part: CircuitPart): string | undefined =>
  part.kind === 'supply' || part.kind === 'load' ? part.converter?.name : undefined;

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
