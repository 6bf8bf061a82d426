import type { Placed } from '../../circuit/circuit.ts';
import { findNets } from '../../circuit/find-nets.ts';
import { type Read, readOf, splitRead } from '../../circuit/reads.ts';
import type { Trial } from '../../keydown/key-down.ts';

/** The numbers of an earlier trial of a hook-up in a later one: of what is in the same fragments, whose names tell. */
export class NumbersBetween {
  /** By block of then its number now, by region likewise; -1 for what is gone. */
  readonly blocks: Int32Array;
  readonly regions: Int32Array;
  private readonly areSame: boolean;

  constructor(
    private readonly then: Trial,
    private readonly now: Trial,
  ) {
    const [before, after] = [then.solvers, now.solvers];
    const isSameGraph = after.dc.hasLayoutOf(before.dc);
    this.blocks = new Int32Array(before.dc.blocks).map((_, block) =>
      isSameGraph ? block : this.blockNow(before.dc.partsOf(block)),
    );
    this.regions = new Int32Array(before.rf.count).fill(-1);
    for (const placed of then.circuit.placed.values()) {
      for (let i = 0; i < placed.fragment.rfPorts.length; i++) {
        const region = before.rf.numberAt(placed.first.rfPort + i);
        if (this.regions[region] === -1) this.regions[region] = this.regionOf(placed, i);
      }
    }
    this.areSame = isSameGraph && this.regions.every((region, i) => region === i);
  }

  /** Whether a fragment has the same parts as then, whatever their figures are. */
  private there(placed: Placed): Placed | undefined {
    const there = this.now.circuit.placed.get(placed.fragment.name);
    return there?.fragment.parts.length === placed.fragment.parts.length ? there : undefined;
  }

  private blockNow(parts: readonly number[]): number {
    for (const part of parts) {
      const now = this.partNow(part);
      if (now >= 0) return this.now.solvers.dc.blockOf(now);
    }
    return -1;
  }

  private partNow(part: number): number {
    this.ownerOfPart ??= owners(this.then.circuit.placed.values(), 'part', this.then.circuit.parts.length);
    const placed = this.ownerOfPart[part];
    const there = placed && this.there(placed);
    return placed && there ? part - placed.first.part + there.first.part : -1;
  }

  private ownerOfPart: readonly (Placed | undefined)[] | null = null;
  private ownerOfNode: readonly (Placed | undefined)[] | null = null;

  private regionOf({ fragment }: Placed, i: number): number {
    const there = this.now.circuit.placed.get(fragment.name);
    const port = there?.fragment.rfPortOf.get(fragment.rfPorts[i] ?? '');
    return there && port !== undefined ? this.now.solvers.rf.numberAt(there.first.rfPort + port) : -1;
  }

  private nodeNow(node: number): number {
    this.ownerOfNode ??= owners(this.then.circuit.placed.values(), 'node', this.then.circuit.nodes.length);
    const placed = this.ownerOfNode[node];
    const there = placed && this.now.circuit.placed.get(placed.fragment.name);
    const own = there?.fragment.nodeOf.get(placed?.fragment.nodes[node - placed.first.node] ?? '');
    return there && own !== undefined ? there.first.node + own : -1;
  }

  /** What was read then, by the numbers of now. */
  readsNow(reads: readonly Read[]): readonly Read[] {
    return this.areSame ? reads : reads.map((read) => this.readNow(read));
  }

  private readNow(read: Read): Read {
    const { kind, number } = splitRead(read);
    switch (kind) {
      case 'block':
        return readOf(kind, this.blocks[number] ?? -1);
      case 'region':
        return readOf(kind, this.regions[number] ?? -1);
      case 'net':
        return readOf(kind, findNets(this.now.circuit)[this.nodeNow(number)] ?? -1);
      case 'piece':
        return readOf(kind, this.now.solvers.dc.pieceOf(this.nodeNow(number)));
      case 'list':
        return read;
    }
  }
}

/** Of each node or part the fragment that it is in. */
function owners(placed: Iterable<Placed>, of: 'node' | 'part', size: number): (Placed | undefined)[] {
  const owner = new Array<Placed | undefined>(size);
  for (const one of placed) {
    const count = of === 'node' ? one.fragment.nodes.length : one.fragment.parts.length;
    owner.fill(one, one.first[of], one.first[of] + count);
  }
  return owner;
}
