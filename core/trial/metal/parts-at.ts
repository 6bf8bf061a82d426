import type { Circuit, CircuitPart } from '../../circuit/circuit.ts';
import { noteNet } from '../../circuit/find-nets.ts';
import { remember } from '../../station/remember.ts';
import type { Numbered } from '../parts.ts';

/** The parts of a circuit that end at a node, whatever they are, in the circuit's order. */
export function partsAt(circuit: Circuit, node: number): readonly Numbered<CircuitPart>[] {
  noteNet(circuit, node);
  return byNode(circuit)[node] ?? [];
}

const byNode = remember(({ nodes, parts }: Circuit): readonly (readonly Numbered<CircuitPart>[])[] => {
  const at = nodes.map((): Numbered<CircuitPart>[] => []);
  parts.forEach((part, index) => {
    for (const node of new Set(endsOf(part))) at[node]?.push({ index, part });
  });
  return at;
});

function endsOf(part: CircuitPart): readonly number[] {
  switch (part.kind) {
    case 'resistor':
      return [part.a, part.b];
    case 'diode':
      return [part.anode, part.cathode];
    case 'pullUp':
      return [part.node, part.reference];
    default:
      return [part.plus, part.minus];
  }
}
