import type { Circuit, Placed } from '../circuit/circuit.ts';
import { remember } from '../station/remember.ts';
import type { PortRef } from '../station/schema/schema.ts';

/** Whose a node is, and what it is called there: `key.tip`, `@joint`, `chassis`; `a.tip`, `fuse in` of a cable. */
export type Contact = { readonly name: string } & ({ readonly unit: string } | { readonly cable: string });

/** The contact that a node is; null for no node. */
export function contactAt({ placed }: Circuit, node: number): Contact | null {
  const there = placedAt(placed, node, 'node');
  const name = there?.fragment.nodes[node - there.first.node];
  if (!there || name === undefined) return null;
  const owner = there.fragment.name;
  if (owner.startsWith(cable)) return { cable: owner.slice(cable.length), name: name.slice(owner.length + 1) };
  const unit = owner.slice('unit '.length);
  return { unit, name: name.slice(unit.length + 1) };
}

/** The port that a node is a contact of; null in a cable, and for a joint inside a box or its chassis. */
export function portAt(circuit: Circuit, node: number): PortRef | null {
  const contact = contactAt(circuit, node);
  if (!contact || 'cable' in contact || contact.name.startsWith('@')) return null;
  const port = contact.name.slice(0, Math.max(0, contact.name.lastIndexOf('.')));
  return port === '' ? null : { unit: contact.unit, port };
}

/** The port of a unit that an RF port's number stands for; nameless for no port. */
export function rfPortRef({ placed }: Circuit, port: number): PortRef {
  const there = placedAt(placed, port, 'rfPort');
  const name = there?.fragment.rfPorts[port - there.first.rfPort];
  if (!there || name === undefined) return { unit: '', port: '' };
  // Only units have ports of their own.
  const unit = there.fragment.name.slice('unit '.length);
  return { unit, port: name.slice(unit.length + 1) };
}

const cable = 'cable ';

const inOrder = remember((placed: Circuit['placed']): readonly Placed[] => [...placed.values()]);

/** The last of the fragments that begin at or before a number: those with nothing of the sort begin where the next does. */
function placedAt(placed: Circuit['placed'], number: number, of: 'node' | 'rfPort'): Placed | undefined {
  const all = inOrder(placed);
  let [low, high] = [0, all.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((all[middle] as Placed).first[of] <= number) low = middle + 1;
    else high = middle;
  }
  return all[low - 1];
}
