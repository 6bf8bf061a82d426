import { type ItemsAtNodes, listAtNodes } from './find-blocks.ts';
import type { BlockSolution } from './network-solver.ts';

/** A block, as far as it matters here. */
interface GraphNodes {
  readonly nodes: readonly number[];
}

/** By block. */
interface Solutions {
  at(block: number): BlockSolution;
}

/**
 * How the blocks hang together: each but the first of its piece hangs on one node that it shares with a block nearer
 * to the root. Voltages of nodes in different blocks are found by climbing from both until they meet.
 */
export class BlockForest {
  private readonly depth: Int32Array;
  /** The root of each node's tree. */
  private readonly rootOf: Int32Array;
  /** The block on whose far side a node is, and the node's number there; -1 for a root. */
  private readonly above: Int32Array;
  private readonly place: Int32Array;
  /** The node on which a block hangs, and that node's number in it. */
  private readonly hook: Int32Array;
  private readonly hookPlace: Int32Array;
  /** Blocks with those nearer to a root first, and the roots. */
  private readonly order: number[] = [];
  private readonly roots: number[] = [];
  /** By root, how many nodes hang together with it; counted when it is asked for. */
  private sizes: Int32Array | null = null;

  /** Roots are taken in the order of `starts`; any node not named there may become one too. */
  constructor(
    private readonly size: number,
    private readonly blocks: readonly GraphNodes[],
    starts: Iterable<number>,
  ) {
    this.depth = new Int32Array(size).fill(-1);
    this.rootOf = new Int32Array(size);
    this.above = new Int32Array(size).fill(-1);
    this.place = new Int32Array(size);
    this.hook = new Int32Array(blocks.length).fill(-1);
    this.hookPlace = new Int32Array(blocks.length);
    const around = listAtNodes(
      size,
      blocks.map((block) => block.nodes),
    );
    for (const start of starts) this.hang(start, around);
    for (let node = 0; node < size; node++) this.hang(node, around);
  }

  /** Of two nodes that no block joins the piece (named by its root) that has fewer nodes; null where they are in one. */
  smallerApart(a: number, b: number): number | null {
    const [one, other] = [this.rootOf[a] as number, this.rootOf[b] as number];
    if (one === other) return null;
    this.sizes ??= this.countNodes();
    return (this.sizes[one] as number) <= (this.sizes[other] as number) ? one : other;
  }

  /** The piece that a node is in, named by its root. */
  pieceOf(node: number): number {
    return this.rootOf[node] as number;
  }

  private countNodes(): Int32Array {
    const sizes = new Int32Array(this.size);
    for (const root of this.rootOf) sizes[root] = (sizes[root] as number) + 1;
    return sizes;
  }

  /** Volts of node a against node b, or null where nothing in force joins them. */
  between(a: number, b: number, solutions: Solutions): number | null {
    if (this.rootOf[a] !== this.rootOf[b]) return null;
    let volts = 0;
    let [high, low] = [a, b];
    while (high !== low) {
      const [up, down] = [this.above[high] as number, this.above[low] as number];
      if (up === down && up !== -1) {
        const step = localStep(solutions.at(up), this.place[high] as number, this.place[low] as number);
        return step === null ? null : volts + step;
      }
      const climbsHigh = (this.depth[high] as number) >= (this.depth[low] as number);
      const block = climbsHigh ? up : down;
      if (block === -1) return null;
      const node = climbsHigh ? high : low;
      const step = localStep(solutions.at(block), this.place[node] as number, this.hookPlace[block] as number);
      if (step === null) return null;
      volts += climbsHigh ? step : -step;
      if (climbsHigh) high = this.hook[block] as number;
      else low = this.hook[block] as number;
    }
    return volts;
  }

  /** The blocks through which a voltage between two nodes is made up. */
  blocksBetween(a: number, b: number): number[] {
    const passed: number[] = [];
    if (this.rootOf[a] !== this.rootOf[b]) return passed;
    let [high, low] = [a, b];
    while (high !== low) {
      const [up, down] = [this.above[high] as number, this.above[low] as number];
      if (up === down) return up === -1 ? passed : [...passed, up];
      const climbsHigh = (this.depth[high] as number) >= (this.depth[low] as number);
      const block = climbsHigh ? up : down;
      if (block === -1) return passed;
      passed.push(block);
      if (climbsHigh) high = this.hook[block] as number;
      else low = this.hook[block] as number;
    }
    return passed;
  }

  /** Volts of every node against its island's own zero, and the island of each, named by one of its nodes. */
  spread(solutions: Solutions): { volts: Float64Array; island: Int32Array } {
    const volts = new Float64Array(this.size);
    const island = new Int32Array(this.size);
    for (const root of this.roots) island[root] = root;
    for (const b of this.order) {
      const { nodes } = this.blocks[b] as GraphNodes;
      const solution = solutions.at(b);
      const hook = this.hook[b] as number;
      const at = this.hookPlace[b] as number;
      const home = solution.island[at] as number;
      const shift = (volts[hook] as number) - (solution.volts[at] as number);
      for (let i = 0; i < nodes.length; i++) {
        const node = nodes[i] as number;
        if (node === hook) continue;
        const local = solution.island[i] as number;
        volts[node] = (solution.volts[i] as number) + (local === home ? shift : 0);
        island[node] = local === home ? (island[hook] as number) : (nodes[local] as number);
      }
    }
    return { volts, island };
  }

  private hang(start: number, around: ItemsAtNodes) {
    if (this.depth[start] !== -1) return;
    this.depth[start] = 0;
    this.rootOf[start] = start;
    this.roots.push(start);
    const open = [start];
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      for (let k = around.start[node] as number; k < (around.start[node + 1] as number); k++) {
        const b = around.items[k] as number;
        if (this.hook[b] !== -1) continue;
        const { nodes } = this.blocks[b] as GraphNodes;
        this.hook[b] = node;
        this.order.push(b);
        nodes.forEach((other, i) => {
          if (other === node) this.hookPlace[b] = i;
          if (this.depth[other] !== -1) return;
          this.depth[other] = (this.depth[node as number] as number) + 1;
          this.rootOf[other] = start;
          this.above[other] = b;
          this.place[other] = i;
          open.push(other);
        });
      }
    }
  }
}

function localStep({ volts, island }: BlockSolution, a: number, b: number): number | null {
  return island[a] === island[b] ? (volts[a] as number) - (volts[b] as number) : null;
}
