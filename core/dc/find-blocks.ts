/** A piece of a graph that hangs on the rest by single nodes only. */
export interface GraphBlock {
  readonly edges: readonly number[];
  readonly nodes: readonly number[];
}

/**
 * The biconnected blocks of a graph given by its edges' ends (Hopcroft and Tarjan, 1973). No current flows from block
 * to block: all that leaves through a single node would have to come back through it. So each can be solved alone.
 * Nodes without an edge are in no block. An edge from a node to itself is a block of its own.
 */
export function findBlocks(size: number, ends: readonly (readonly [number, number])[]): GraphBlock[] {
  const around: number[][] = Array.from({ length: size }, () => []);
  const blocks: GraphBlock[] = [];
  ends.forEach(([a, b], edge) => {
    if (a === b) {
      blocks.push({ edges: [edge], nodes: [a] });
      return;
    }
    around[a]?.push(edge);
    around[b]?.push(edge);
  });
  const search = new BlockSearch(around, ends, blocks);
  for (let node = 0; node < size; node++) search.from(node);
  return blocks;
}

/** A depth-first walk that cuts off a block whenever nothing below a node reaches above it. */
class BlockSearch {
  private readonly depth: Int32Array;
  /** The least depth that the part of the walk below a node reaches by one edge. */
  private readonly low: Int32Array;
  private readonly next: Int32Array;
  /** How much lay on the pile before the edge that led to a node. */
  private readonly bottom: Int32Array;
  private readonly walked: Uint8Array;
  private readonly pile: number[] = [];
  private clock = 0;

  constructor(
    private readonly around: readonly (readonly number[])[],
    private readonly ends: readonly (readonly [number, number])[],
    private readonly blocks: GraphBlock[],
  ) {
    this.depth = new Int32Array(around.length);
    this.low = new Int32Array(around.length);
    this.next = new Int32Array(around.length);
    this.bottom = new Int32Array(around.length);
    this.walked = new Uint8Array(ends.length);
  }

  from(start: number) {
    if (this.depth[start] !== 0 || this.around[start]?.length === 0) return;
    const path: number[] = [start];
    this.enter(start);
    while (path.length > 0) {
      const node = path.at(-1) as number;
      const edge = this.around[node]?.[this.next[node] as number];
      if (edge === undefined) {
        path.pop();
        const above = path.at(-1);
        if (above !== undefined) this.leave(node, above);
        continue;
      }
      this.next[node] = (this.next[node] as number) + 1;
      if (this.walked[edge] === 1) continue;
      this.walked[edge] = 1;
      const [a, b] = this.ends[edge] as readonly [number, number];
      const other = a === node ? b : a;
      if (this.depth[other] === 0) {
        this.enter(other);
        this.bottom[other] = this.pile.length;
        path.push(other);
      } else if ((this.depth[other] as number) < (this.low[node] as number))
        this.low[node] = this.depth[other] as number;
      this.pile.push(edge);
    }
  }

  private enter(node: number) {
    this.clock++;
    this.depth[node] = this.clock;
    this.low[node] = this.clock;
  }

  private leave(node: number, above: number) {
    if ((this.low[node] as number) < (this.low[above] as number)) this.low[above] = this.low[node] as number;
    if ((this.low[node] as number) < (this.depth[above] as number)) return;
    // Nothing below reaches above the upper node: all walked since the edge that led down here is one block.
    const bottom = this.bottom[node] as number;
    const edges = this.pile.slice(bottom);
    this.pile.length = bottom;
    this.blocks.push({ edges, nodes: this.nodesOf(edges) });
  }

  private nodesOf(edges: readonly number[]): readonly number[] {
    const [first] = edges;
    // Most blocks are single edges.
    if (first !== undefined && edges.length === 1) return this.ends[first] as readonly [number, number];
    return [...new Set(edges.flatMap((edge) => this.ends[edge] as readonly [number, number]))];
  }
}
