import { type ActorStates, type Circuit, isOpenGate } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import { type Ends, endsOf } from './elimination-plan.ts';

/** Nodes by name and the parts between them. */
export type Network = Pick<Circuit, 'nodes' | 'parts'>;

/** Which nodes hang together, and the node of each island against which its voltages count. */
export interface Islands {
  /** Island of each node, named by one of its nodes. */
  readonly of: Int32Array;
  /** 1 where the node is its island's reference. */
  readonly reference: Uint8Array;
  /** 1 where the part is in force. */
  readonly inForce: Uint8Array;
}

/** Finds the islands of one network for any of its states. */
export class IslandFinder {
  /** Nodes as they are wanted for references: a supply's minus (by its part) before a chassis before any other. */
  private readonly minuses: readonly (readonly [number, number])[];
  private readonly chassis: readonly number[];

  constructor(
    private readonly network: Network,
    private readonly ends: Ends = network.parts.map(endsOf),
  ) {
    const { nodes, parts } = network;
    this.minuses = parts.flatMap((part, i) => (part.kind === 'supply' ? [[i, part.minus] as const] : []));
    this.chassis = nodes.flatMap((name, node) => (name.endsWith('.chassis') ? [node] : []));
  }

  /** The islands with these actors on and these parts open. */
  find(on: ActorStates, open: ReadonlySet<number>): Islands {
    const { nodes, parts } = this.network;
    const groups = new Groups(nodes.length);
    const inForce = new Uint8Array(parts.length);
    for (let i = 0; i < parts.length; i++) {
      if (open.has(i) || !isOpenGate(parts[i]?.gate ?? [], on)) continue;
      inForce[i] = 1;
      const [a, b] = this.ends[i] as readonly [number, number];
      groups.join(a, b);
    }
    const of = groups.names();
    return { of, reference: this.chooseReferences(of, inForce), inForce };
  }

  private chooseReferences(of: Int32Array, inForce: Uint8Array): Uint8Array {
    const reference = new Uint8Array(of.length);
    const done = new Uint8Array(of.length);
    const choose = (node: number) => {
      const island = of[node] as number;
      if (done[island] === 1) return;
      done[island] = 1;
      reference[node] = 1;
    };
    for (const [part, minus] of this.minuses) if (inForce[part] === 1) choose(minus);
    for (const node of this.chassis) choose(node);
    for (let node = 0; node < of.length; node++) choose(node);
    return reference;
  }
}
