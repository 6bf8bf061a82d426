import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colourGraph, type Graph } from '../../../core/whatif/scheme/colour-graph.ts';

/** A graph from its number of nodes and its edges; each node weighs 1 and is free. */
function graphOf(nodes: number, pairs: readonly (readonly [number, number])[]): Graph {
  const edges = Array.from({ length: nodes }, () => new Set<number>());
  for (const [one, two] of pairs) {
    edges[one]?.add(two);
    edges[two]?.add(one);
  }
  return { weights: edges.map(() => 1), edges, fixed: edges.map(() => undefined) };
}

const countOf = (classes: readonly number[] | undefined) => new Set(classes).size;

const ring = (length: number) =>
  graphOf(
    length,
    Array.from({ length }, (_, i) => [i, (i + 1) % length] as const),
  );

/** Outer ring, inner star, spokes. */
const petersen = graphOf(
  10,
  [0, 1, 2, 3, 4].flatMap((i) => [[i, (i + 1) % 5] as const, [5 + i, 5 + ((i + 2) % 5)] as const, [i, 5 + i] as const]),
);

/** The Grötzsch graph: no triangle, and four colours; the Mycielskian of the ring of five. */
const groetzsch = graphOf(
  11,
  [0, 1, 2, 3, 4].flatMap((i) => [
    [i, (i + 1) % 5] as const,
    [5 + i, (i + 1) % 5] as const,
    [5 + i, (i + 4) % 5] as const,
    [5 + i, 10] as const,
  ]),
);

// Chromatic numbers as in J. A. Bondy, U. S. R. Murty, Graph Theory, Springer 2008, chapter 14 (from memory).
describe('graphs whose number of colours is known', () => {
  it.each([
    ['an even ring', ring(8), 2],
    ['an odd ring', ring(9), 3],
    ['the Petersen graph', petersen, 3],
    ['the Grötzsch graph', groetzsch, 4],
    ['nothing at all', graphOf(3, []), 1],
  ])('%s', (_, graph, colours) => {
    const found = colourGraph(graph, 12);
    expect(countOf(found?.classes)).toBe(colours);
    expect(found?.exact).toBe(true);
  });
  it('has no answer where there are not classes enough', () => expect(colourGraph(groetzsch, 3)).toBeUndefined());
});

const drawn = fc.integer({ min: 1, max: 7 }).chain((nodes) =>
  fc.record({
    pairs: fc.array(fc.tuple(fc.nat({ max: nodes - 1 }), fc.nat({ max: nodes - 1 })), { maxLength: 14 }),
    weights: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: nodes, maxLength: nodes }),
    fixed: fc.array(fc.option(fc.nat({ max: 2 }), { nil: undefined, freq: 4 }), { minLength: nodes, maxLength: nodes }),
  }),
);

interface Drawn {
  pairs: [number, number][];
  weights: number[];
  fixed: (number | undefined)[];
}

function asGraph({ pairs, weights, fixed }: Drawn): Graph {
  const isPossible = ([one, two]: [number, number]) =>
    one !== two && (fixed[one] === undefined || fixed[one] !== fixed[two]);
  return { ...graphOf(weights.length, pairs.filter(isPossible)), weights, fixed };
}

const weightOf = ({ weights }: Graph, classes: readonly number[]) =>
  weights.reduce((sum, weight, node) => sum + (classes[node] === 0 ? 0 : weight), 0);

const isProper = ({ edges, fixed }: Graph, classes: readonly number[]) =>
  edges.every((others, node) => [...others].every((other) => classes[node] !== classes[other])) &&
  fixed.every((own, node) => own === undefined || own === classes[node]);

/** The fewest classes and their least weight, by looking at every assignment that there is. */
function byTryingAll(graph: Graph): { classes: number; weight: number } {
  const nodes = graph.weights.length;
  for (let k = Math.max(1, ...graph.fixed.map((own) => (own ?? -1) + 1)); ; k++) {
    let least = Number.POSITIVE_INFINITY;
    for (let n = 0; n < k ** nodes; n++) {
      const classes = graph.weights.map((_, node) => Math.floor(n / k ** node) % k);
      if (isProper(graph, classes)) least = Math.min(least, weightOf(graph, classes));
    }
    if (Number.isFinite(least)) return { classes: k, weight: least };
  }
}

it('any small graph is coloured as well as trying everything would', () => {
  fc.assert(
    fc.property(drawn, (given) => {
      const graph = asGraph(given);
      const found = colourGraph(graph, 12);
      const best = byTryingAll(graph);
      expect(found?.exact).toBe(true);
      expect(isProper(graph, found?.classes ?? [])).toBe(true);
      expect(Math.max(...(found?.classes ?? []))).toBeLessThan(best.classes);
      expect(weightOf(graph, found?.classes ?? [])).toBe(best.weight);
    }),
    { numRuns: 150 },
  );
});
