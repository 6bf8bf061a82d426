import { remember } from '../station/remember.ts';
import { type Circuit, isMetal } from './circuit.ts';
import { noteNet } from './find-nets.ts';

/** For each node the name (one of its nodes) of the group that metal joins for good, whatever any actor does. */
export function metalGroups(circuit: Circuit): (node: number) => number {
  const groupOf = groupsOf(circuit);
  return (node) => {
    noteNet(circuit, node);
    return groupOf(node);
  };
}

const groupsOf = remember(({ nodes, parts }: Circuit) => {
  const above = nodes.map((_, node) => node);
  const top = (node: number): number => {
    let at = node;
    for (let next = above[at] ?? at; next !== at; next = above[at] ?? at) {
      above[at] = above[next] ?? next;
      at = next;
    }
    return at;
  };
  for (const part of parts) if (isMetal(part) && part.gate.length === 0) above[top(part.a)] = top(part.b);
  return top;
});
