import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findBlocks } from '../../core/dc/find-blocks.ts';

const blocksOf = (size: number, ends: [number, number][]) =>
  findBlocks(size, ends)
    .map((b) => [...b.edges].sort((x, y) => x - y))
    .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));

describe('blocks', () => {
  it('two loops that share a node are two blocks', () => {
    expect(
      blocksOf(5, [
        [0, 1],
        [1, 2],
        [2, 0],
        [2, 3],
        [3, 4],
        [4, 2],
      ]),
    ).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ]);
  });
  it('a bridge is a block of its own', () => {
    expect(
      blocksOf(4, [
        [0, 1],
        [1, 2],
        [2, 3],
      ]),
    ).toEqual([[0], [1], [2]]);
  });
  it('two edges between the same nodes belong together', () => {
    expect(
      blocksOf(3, [
        [0, 1],
        [1, 2],
        [1, 0],
      ]),
    ).toEqual([[0, 2], [1]]);
  });
  it('an edge to itself stands alone, a node without an edge is in none', () => {
    expect(findBlocks(3, [[1, 1]])).toEqual([{ edges: [0], nodes: [1] }]);
  });
});

/** By definition: two edges are in one block if a simple cycle goes through both; tried by taking each node away. */
function slowly(size: number, ends: [number, number][]): number[][] {
  const together = (e: number, f: number) => {
    for (let gone = 0; gone < size; gone++) {
      const parent = Array.from({ length: size }, (_, i) => i);
      const find = (n: number): number => (parent[n] === n ? n : find(parent[n] as number));
      ends.forEach(([a, b]) => {
        if (a !== gone && b !== gone) parent[find(a)] = find(b);
      });
      const kept = (edge: number) => (ends[edge] as [number, number]).filter((n) => n !== gone).map(find);
      if (!kept(e).some((n) => kept(f).includes(n))) return false;
    }
    return true;
  };
  const left = new Set(ends.map((_, i) => i));
  const blocks: number[][] = [];
  for (const edge of left) {
    // A single edge with no partner of its own pair is in a block with others only if a cycle exists.
    const block = [...left].filter(
      (other) => other === edge || (together(edge, other) && onCycle(size, ends, edge, other)),
    );
    for (const e of block) left.delete(e);
    blocks.push(block.sort((a, b) => a - b));
  }
  return blocks.sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
}

/** Whether each of two edges lies on some cycle: its ends stay joined without it. */
function onCycle(size: number, ends: [number, number][], ...edges: number[]): boolean {
  return edges.every((edge) => {
    const parent = Array.from({ length: size }, (_, i) => i);
    const find = (n: number): number => (parent[n] === n ? n : find(parent[n] as number));
    ends.forEach(([a, b], i) => {
      if (i !== edge) parent[find(a)] = find(b);
    });
    const [a, b] = ends[edge] as [number, number];
    return find(a) === find(b);
  });
}

it('agrees with the definition on small graphs', () => {
  const graphs = fc.integer({ min: 2, max: 7 }).chain((size) =>
    fc.record({
      size: fc.constant(size),
      ends: fc.array(
        fc.tuple(fc.nat(size - 1), fc.nat(size - 1)).filter(([a, b]) => a !== b),
        { minLength: 1, maxLength: 10 },
      ),
    }),
  );
  fc.assert(
    fc.property(graphs, ({ size, ends }) => {
      expect(blocksOf(size, ends)).toEqual(slowly(size, ends));
    }),
    { numRuns: 400 },
  );
});
