import type { ActorStates, Circuit, CircuitPart } from '../circuit/circuit.ts';
import type { BlockSolution } from './balance.ts';
import { Block } from './block.ts';
import { BlockForest } from './block-forest.ts';
import { type DcLayout, DcSolution } from './dc-solution.ts';
import { endsOf } from './elimination-plan.ts';
import { findBlocks } from './find-blocks.ts';

/** Solves one circuit for any of its states. */
export class DcSolver {
  /** Of each actor the blocks that depend on it. */
  private readonly blocksOfActor: readonly (readonly number[])[];
  /** What each block looks like with every actor off. */
  private readonly still: readonly BlockSolution[];

  /** `layout` is that of a circuit of the same shape, whose blocks serve where they are the same. */
  constructor(
    circuit: Circuit,
    private readonly layout: DcLayout = layOut(circuit),
  ) {
    const blocksOfActor: number[][] = circuit.actors.map(() => []);
    layout.blocks.forEach((block, b) => {
      for (const actor of block.actors) blocksOfActor[actor]?.push(b);
    });
    this.blocksOfActor = blocksOfActor;
    const none = new Uint8Array(circuit.actors.length);
    this.still = layout.blocks.map((block) => block.solve(none, new Set()));
  }

  /** A solver for a circuit that differs from this one's in some parts (not in what they join): all else stays solved. */
  withParts(circuit: Circuit, differing: readonly number[]): DcSolver {
    const { nodes, parts } = circuit;
    const blocks = [...this.layout.blocks];
    for (const b of new Set(differing.map((part) => this.layout.blockOf[part] as number))) {
      const block = blocks[b] as Block;
      blocks[b] = new Block(nodes, parts, { nodes: block.nodes, edges: block.parts });
    }
    return new DcSolver(circuit, { ...this.layout, blocks });
  }

  /** Actors on which the voltage between two nodes depends. */
  actorsBetween(a: number, b: number): number[] {
    return this.layout.forest.blocksBetween(a, b).flatMap((block) => this.layout.blocks[block]?.actors ?? []);
  }

  /** Actors on which the current in a part depends. */
  actorsOf(part: number): readonly number[] {
    return this.layout.blocks[this.layout.blockOf[part] ?? -1]?.actors ?? [];
  }

  /** The blocks that depend on any of these actors. */
  blocksOf(actors: readonly number[]): number[] {
    return [...new Set(actors.flatMap((actor) => this.blocksOfActor[actor] ?? []))];
  }

  /**
   * The DC state with these actors on. Parts in `open` are taken out (an opened fuse, a pulled plug). Loads draw a
   * constant current, a constant power or what a resistance does, and fade below their drop-out voltage; a supply that
   * limits holds its peak current, one that shuts down goes off. Always an answer: see `settled`.
   */
  solve(on: ActorStates, open: ReadonlySet<number> = new Set()): DcSolution {
    const { blocks } = this.layout;
    const isOpen = (block: Block) => open.size > 0 && block.parts.some((part) => open.has(part));
    const solutions = blocks.map((block, b) =>
      block.actors.length > 0 || isOpen(block) ? block.solve(on, open) : (this.still[b] as BlockSolution),
    );
    return new DcSolution(this.layout, solutions);
  }

  /** The same where all is as in an earlier state (with the same parts open) but for these blocks. */
  solveFrom(earlier: DcSolution, blocks: readonly number[], on: ActorStates, open: ReadonlySet<number>): DcSolution {
    const changed = new Map<number, BlockSolution>();
    for (const b of blocks) {
      const solution = (this.layout.blocks[b] as Block).solve(on, open);
      if (solution !== earlier.base[b]) changed.set(b, solution);
    }
    return new DcSolution(this.layout, earlier.base, changed);
  }
}

function layOut(circuit: Circuit): DcLayout {
  const { nodes, parts } = circuit;
  const isPart = (edge: number) => edge < parts.length;
  const blocks = findBlocks(nodes.length, edgesOf(parts)).map(
    ({ edges, nodes: own }) =>
      new Block(nodes, parts, { nodes: own, edges: edges.every(isPart) ? edges : edges.filter(isPart) }),
  );
  const blockOf = new Int32Array(parts.length);
  const placeOf = new Int32Array(parts.length);
  blocks.forEach((block, b) => {
    block.parts.forEach((part, place) => {
      blockOf[part] = b;
      placeOf[part] = place;
    });
  });
  return { blocks, forest: new BlockForest(nodes.length, blocks, zeros(circuit)), blockOf, placeOf };
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
