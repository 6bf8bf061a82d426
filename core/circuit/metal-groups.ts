import { remember } from '../station/remember.ts';
import { type Circuit, isMetal } from './circuit.ts';
import { noteNet } from './find-nets.ts';
import { Groups } from './groups.ts';

/** For each node the name (one of its nodes) of the group that metal joins for good, whatever any actor does. */
export function metalGroups(circuit: Circuit): (node: number) => number {
  const groups = groupsOf(circuit);
  return (node) => {
    noteNet(circuit, node);
    return groups.nameOf(node);
  };
}

const groupsOf = remember(({ nodes, parts }: Circuit): Groups => {
  const groups = new Groups(nodes.length);
  for (const part of parts) if (isMetal(part) && part.gate.length === 0) groups.join(part.a, part.b);
  return groups;
});
