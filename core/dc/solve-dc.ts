import type { ActorStates, Circuit, CircuitPart } from '../circuit/circuit.ts';
import type { BlockSolution } from './balance.ts';
import { Block } from './block.ts';
import { BlockForest } from './block-forest.ts';
import { type DcLayout, DcSolution } from './dc-solution.ts';
import { endsOf } from './elimination-plan.ts';
import { findBlocks } from './find-blocks.ts';

/** Solves one circuit for any of its states. */
export class DcSolver {
  /** Of each actor the blocks that depend on it, once they are asked for. */
  private blocksOfActor: readonly (readonly number[])[] | null = null;

  /** `layout` is that of a circuit of the same shape, whose blocks serve where they are the same. */
  constructor(
    private readonly circuit: Circuit,
    private readonly layout: DcLayout = layOut(circuit),
  ) {}

  /**
   * The solver of another circuit. Where that has the same parts between the same nodes, only blocks are solved anew in
   * which a part is another object than here.
   */
  solverOf(circuit: Circuit): DcSolver {
    if (!joinsTheSame(this.circuit, circuit)) return new DcSolver(circuit);
    const blocks = this.layout.blocks.map((block) => block.withParts(circuit.parts));
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
    return new DcSolution(
      this.layout,
      this.layout.blocks.map((block) => block.solve(on, open)),
    );
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
