import { remember } from '../station/remember.ts';
import { type Circuit, isMetal } from './circuit.ts';
import { Groups } from './groups.ts';

/** For each node the name of its net: the nodes that metal or a diode joins to it in any state of any actor. */
export const findNets = remember(({ nodes, parts }: Circuit): Int32Array => {
  const nets = new Groups(nodes.length);
  for (const part of parts) {
    if (part.kind === 'diode') nets.join(part.anode, part.cathode);
    else if (isMetal(part)) nets.join(part.a, part.b);
  }
  return nets.names();
});

/** Writes down that somebody follows the metal from a node. */
export function noteNet(circuit: Circuit, node: number) {
  if (circuit.reads.isWanted) circuit.reads.note('net', findNets(circuit)[node] ?? -1);
}
