import type { Circuit, CircuitPart, Fragment, Placed } from '../../circuit/circuit.ts';
import type { WholeList } from '../../circuit/reads.ts';
import { endsOf } from '../../dc/elimination-plan.ts';

/** A fragment as it was and as it is; undefined where it was or is none. */
export interface FragmentChange {
  readonly name: string;
  readonly was: Placed | undefined;
  readonly is: Placed | undefined;
}

/** The fragments that came, went or are made from something else. */
export function changedFragments(then: Circuit, now: Circuit): FragmentChange[] {
  const changes: FragmentChange[] = [];
  for (const [name, before] of then.placed) {
    const after = now.placed.get(name);
    if (after?.fragment !== before.fragment) changes.push({ name, was: before, is: after });
  }
  for (const [name, after] of now.placed) if (!then.placed.has(name)) changes.push({ name, was: undefined, is: after });
  return changes;
}

/** The nodes (by their number then) of a fragment as it was, and those that it now leads to. */
export function nodesTouched(circuit: Circuit, { was, is }: FragmentChange): number[] {
  const nodes = was ? [...was.nodesElsewhere, ...was.fragment.nodes.map((_, i) => was.first.node + i)] : [];
  for (const { unit, name } of is?.fragment.nodesElsewhere ?? []) {
    const there = circuit.placed.get(`unit ${unit}`);
    const own = there?.fragment.nodeOf.get(name);
    if (there && own !== undefined) nodes.push(there.first.node + own);
  }
  return nodes;
}

/** Whether two fragments have parts between the same nodes. */
export const joinsTheSame = (a: Fragment, b: Fragment): boolean =>
  a.parts.length === b.parts.length &&
  a.nodesElsewhere.length === b.nodesElsewhere.length &&
  a.nodesElsewhere.every(({ name }, i) => name === b.nodesElsewhere[i]?.name) &&
  a.parts.every((part, i) => {
    const [ends, others] = [endsOf(part), endsOf(b.parts[i] as CircuitPart)];
    return ends[0] === others[0] && ends[1] === others[1];
  });

/** The RF ports (by their number then) of a fragment as it was, and those that it now leads to. */
export function portsTouched(circuit: Circuit, { was, is }: FragmentChange): number[] {
  const ports = was ? [...was.portsElsewhere, ...was.fragment.rfPorts.map((_, i) => was.first.rfPort + i)] : [];
  for (const { unit, name } of is?.fragment.portsElsewhere ?? []) {
    const there = circuit.placed.get(`unit ${unit}`);
    const own = there?.fragment.rfPortOf.get(name);
    if (there && own !== undefined) ports.push(there.first.rfPort + own);
  }
  return ports;
}

/** The lists that a fragment has something in. */
export function listsTouched({ parts, rfLoads }: Placed): WholeList[] {
  return [
    ...(parts.some((p) => p.kind === 'load') ? (['loads'] as const) : []),
    ...(parts.some((p) => p.kind === 'supply') ? (['supplies'] as const) : []),
    ...(parts.some((p) => p.kind === 'resistor' && p.fuse !== undefined) ? (['fuses'] as const) : []),
    ...(rfLoads.some((l) => l.spec.role === 'receiver') ? (['receivers'] as const) : []),
  ];
}
