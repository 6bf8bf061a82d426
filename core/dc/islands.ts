import { type ActorStates, type Circuit, isOpenGate } from '../circuit/circuit.ts';
import { endsOf } from './elimination-plan.ts';

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

/** Finds the islands with these actors on and these parts open; a supply's minus is the reference where there is one. */
export function findIslands(circuit: Network, on: ActorStates, open: ReadonlySet<number>): Islands {
  const { nodes, parts } = circuit;
  const parent = Int32Array.from(nodes, (_, i) => i);
  const find = (node: number): number => {
    let root = node;
    while (parent[root] !== root) root = parent[root] as number;
    for (let n = node; n !== root; ) {
      const next = parent[n] as number;
      parent[n] = root;
      n = next;
    }
    return root;
  };
  const inForce = Uint8Array.from(parts, (part, i) => (!open.has(i) && isOpenGate(part.gate, on) ? 1 : 0));
  parts.forEach((part, i) => {
    if (inForce[i] === 0) return;
    const [a, b] = endsOf(part);
    parent[find(a)] = find(b);
  });
  const of = Int32Array.from(nodes, (_, i) => find(i));
  return { of, reference: chooseReferences(circuit, of, inForce), inForce };
}

function chooseReferences(circuit: Network, of: Int32Array, inForce: Uint8Array): Uint8Array {
  const reference = new Uint8Array(of.length);
  const done = new Set<number>();
  const choose = (node: number) => {
    const island = of[node] as number;
    if (done.has(island)) return;
    done.add(island);
    reference[node] = 1;
  };
  circuit.parts.forEach((part, i) => {
    if (part.kind === 'supply' && inForce[i] === 1) choose(part.minus);
  });
  circuit.nodes.forEach((name, node) => {
    if (name.endsWith('.chassis')) choose(node);
  });
  of.forEach((_, node) => {
    choose(node);
  });
  return reference;
}
