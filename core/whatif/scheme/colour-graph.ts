/** What is to be told apart: nodes by number, each with its weight and, where it may not change, its class. */
export interface Graph {
  /** How much it costs to give a node any class but 0. */
  readonly weights: readonly number[];
  /** The numbers of the nodes that must be of another class, node by node. */
  readonly edges: readonly ReadonlySet<number>[];
  /** Class that a node has already, node by node; undefined where it is free. */
  readonly fixed: readonly (number | undefined)[];
}

export interface Colouring {
  /** Class of each node; neighbours differ, but for those that `fixed` made alike. */
  readonly classes: readonly number[];
  /** Whether no other one has fewer classes, or as few and less weight outside class 0. */
  readonly exact: boolean;
}

/** Steps of the search for one piece of the graph; beyond it, the best so far is taken and said not to be exact. */
const mostSteps = 20_000;

/**
 * Classes from 0 on for the nodes of a graph, as few as can be and then as little weight as can be outside class 0.
 * Undefined where even `mostClasses` are not enough, as far as was searched. Pieces that hang together by no edge are
 * coloured each for itself; within one, the node with the fewest classes left goes first (Brélaz, New methods to color
 * the vertices of a graph, CACM 22/4, 1979), and what can't become better is not followed.
 */
export function colourGraph(graph: Graph, mostClasses: number): Colouring | undefined {
  const pieces = piecesOf(graph);
  const taken = Math.max(0, ...graph.fixed.map((c) => (c ?? -1) + 1));
  let exact = true;
  let count = Math.max(1, taken);
  for (const piece of pieces) {
    while (count <= mostClasses) {
      const answer = search(graph, piece, count, true);
      if (!answer.isWhole) exact = false;
      if (answer.classes) break;
      count += 1;
    }
  }
  if (count > mostClasses) return undefined;
  const classes = graph.weights.map(() => 0);
  for (const piece of pieces) {
    const answer = search(graph, piece, count, false);
    if (!answer.isWhole) exact = false;
    // What was found with so many classes before is found again: the search begins in the same way.
    piece.forEach((node, i) => {
      classes[node] = answer.classes?.[i] ?? 0;
    });
  }
  return { classes, exact };
}

function piecesOf({ edges }: Graph): number[][] {
  const seen = new Set<number>();
  return edges.flatMap((_, start) => {
    if (seen.has(start)) return [];
    const piece = [start];
    seen.add(start);
    for (const node of piece) {
      for (const next of edges[node] ?? []) {
        if (seen.has(next)) continue;
        seen.add(next);
        piece.push(next);
      }
    }
    return [piece];
  });
}

interface Searched {
  /** Class of each node of the piece; undefined where there is no colouring, or none was found in time. */
  readonly classes: readonly number[] | undefined;
  /** Whether the search came to its end. */
  readonly isWhole: boolean;
}

/** The first colouring with so many classes, or the lightest. */
function search(
  { weights, edges, fixed }: Graph,
  piece: readonly number[],
  count: number,
  isFirstEnough: boolean,
): Searched {
  const now = new Map<number, number>();
  for (const node of piece) {
    const own = fixed[node];
    if (own !== undefined) now.set(node, own);
  }
  const held = [...now.values()].reduce((most, c) => Math.max(most, c), 0);
  let best: number[] | undefined;
  let least = Number.POSITIVE_INFINITY;
  let steps = 0;
  const free = piece.filter((node) => !now.has(node));
  const around = (node: number) => {
    const taken = new Set<number>();
    for (const other of edges[node] ?? []) {
      const c = now.get(other);
      if (c !== undefined) taken.add(c);
    }
    return taken;
  };
  function next(): number | undefined {
    let chosen: number | undefined;
    let [most, widest] = [-1, -1];
    for (const node of free) {
      if (now.has(node)) continue;
      const [full, wide] = [around(node).size, edges[node]?.size ?? 0];
      if (full < most || (full === most && wide <= widest)) continue;
      [chosen, most, widest] = [node, full, wide];
    }
    return chosen;
  }
  /** What is still to come at least: nodes beside class 0, and of each two neighbours the lighter one. */
  function atLeast(): number {
    const seen = new Set<number>();
    let sum = 0;
    for (const node of free) {
      if (now.has(node) || !around(node).has(0)) continue;
      seen.add(node);
      sum += weights[node] ?? 1;
    }
    for (const node of free) {
      if (now.has(node) || seen.has(node)) continue;
      for (const other of edges[node] ?? []) {
        if (now.has(other) || seen.has(other)) continue;
        seen.add(node).add(other);
        sum += Math.min(weights[node] ?? 1, weights[other] ?? 1);
        break;
      }
    }
    return sum;
  }
  /** Whether the search is over. */
  function follow(weight: number, highest: number): boolean {
    if (best && weight + atLeast() >= least) return false;
    const node = next();
    if (node === undefined) {
      least = weight;
      best = piece.map((n) => now.get(n) ?? 0);
      return isFirstEnough;
    }
    const taken = around(node);
    // Classes that nobody has yet are all the same: one of them is tried.
    for (let c = 0; c < count && c <= highest + 1; c++) {
      if (taken.has(c)) continue;
      steps += 1;
      if (steps > mostSteps) return true;
      now.set(node, c);
      if (follow(weight + (c === 0 ? 0 : (weights[node] ?? 1)), Math.max(highest, c))) return true;
      now.delete(node);
    }
    return false;
  }
  follow(0, held);
  return { classes: best, isWhole: steps <= mostSteps };
}
