import { remember } from '../station/remember.ts';
import { type Circuit, isMetal } from './circuit.ts';

/** For each node the number of its net: the nodes that metal or a diode joins to it in any state of any actor. */
export const findNets = remember(({ nodes, parts }: Circuit): Int32Array => {
  const above = new Int32Array(nodes.length);
  for (let node = 0; node < above.length; node++) above[node] = node;
  const top = (node: number): number => {
    let at = node;
    while (above[at] !== at) {
      above[at] = above[above[at] as number] as number;
      at = above[at] as number;
    }
    return at;
  };
  for (const part of parts) {
    if (part.kind === 'diode') above[top(part.anode)] = top(part.cathode);
    else if (isMetal(part)) above[top(part.a)] = top(part.b);
  }
  for (let node = 0; node < above.length; node++) above[node] = top(node);
  return above;
});

/** Writes down that somebody follows the metal from a node. */
export function noteNet(circuit: Circuit, node: number) {
  if (circuit.reads.isWanted) circuit.reads.note('net', findNets(circuit)[node] ?? -1);
}
