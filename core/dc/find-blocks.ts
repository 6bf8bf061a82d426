/** A piece of a graph that hangs on the rest by single nodes only. */
export interface GraphBlock {
  readonly edges: readonly number[];
  readonly nodes: readonly number[];
}

type Ends = readonly (readonly [number, number])[];

/** For each node what is at it: the items of node `n` are `items[start[n]]` to `items[start[n + 1]]`. */
export interface ItemsAtNodes {
  readonly start: Int32Array;
  readonly items: Int32Array;
}

/** Lists items by the nodes that they touch, each with its own number. */
export function listAtNodes(size: number, nodesOfItem: readonly (readonly number[])[]): ItemsAtNodes {
  const start = new Int32Array(size + 1);
  for (const nodes of nodesOfItem) for (const node of nodes) start[node + 1] = (start[node + 1] as number) + 1;
  for (let node = 0; node < size; node++) start[node + 1] = (start[node + 1] as number) + (start[node] as number);
  const items = new Int32Array(start[size] as number);
  const free = start.slice();
  for (let item = 0; item < nodesOfItem.length; item++) {
    for (const node of nodesOfItem[item] ?? []) {
      const at = free[node] as number;
      items[at] = item;
      free[node] = at + 1;
    }
  }
  return { start, items };
}

/**
 * The biconnected blocks of a graph given by its edges' ends (Hopcroft and Tarjan, 1973). No current flows from block
 * to block: all that leaves through a single node would have to come back through it. So each can be solved alone.
 * Nodes without an edge are in no block. An edge from a node to itself is a block of its own.
 */
export function findBlocks(size: number, ends: Ends): GraphBlock[] {
  const blocks: GraphBlock[] = [];
  ends.forEach(([a, b], edge) => {
    if (a === b) blocks.push({ edges: [edge], nodes: [a] });
  });
  const search = new BlockSearch(size, ends, blocks);
  for (let node = 0; node < size; node++) search.from(node);
  return blocks;
}

/** A depth-first walk that cuts off a block whenever nothing below a node reaches above it. */
class BlockSearch {
  private readonly around: ItemsAtNodes;
  private readonly depth: Int32Array;
  /** The least depth that the part of the walk below a node reaches by one edge. */
  private readonly low: Int32Array;
  private readonly next: Int32Array;
  /** How much lay on the pile before the edge that led to a node. */
  private readonly bottom: Int32Array;
  private readonly walked: Uint8Array;
  /** The block of which a node was last taken down as a member. */
  private readonly member: Int32Array;
  private readonly pile: number[] = [];
  private clock = 0;

  constructor(
    size: number,
    private readonly ends: Ends,
    private readonly blocks: GraphBlock[],
  ) {
    this.around = listAtNodes(size, ends);
    this.depth = new Int32Array(size);
    this.low = new Int32Array(size);
    this.next = this.around.start.slice(0, size);
    this.bottom = new Int32Array(size);
    this.walked = Uint8Array.from(ends, ([a, b]) => (a === b ? 1 : 0));
    this.member = new Int32Array(size).fill(-1);
  }

  from(start: number) {
    const { start: first, items } = this.around;
    if (this.depth[start] !== 0 || first[start] === first[start + 1]) return;
    const path: number[] = [start];
    this.enter(start);
    while (path.length > 0) {
      const node = path[path.length - 1] as number;
      const at = this.next[node] as number;
      if (at === first[node + 1]) {
        path.pop();
        const above = path[path.length - 1];
        if (above !== undefined) this.leave(node, above);
        continue;
      }
      this.next[node] = at + 1;
      const edge = items[at] as number;
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
    const block = this.blocks.length;
    const nodes: number[] = [];
    for (const edge of edges) {
      for (const node of this.ends[edge] as readonly [number, number]) {
        if (this.member[node] === block) continue;
        this.member[node] = block;
        nodes.push(node);
      }
    }
    return nodes;
  }
}
