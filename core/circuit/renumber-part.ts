import type { CircuitPart, Gate } from './circuit.ts';

/** A part between other nodes, and with other gates where actors have other numbers. */
export function renumberPart(
  part: CircuitPart,
  node: (node: number) => number,
  gate: (gate: Gate) => Gate = keep,
): CircuitPart {
  switch (part.kind) {
    case 'resistor': {
      // One by one: these are most parts, and a spread takes several times as long.
      const { kind, a, b, ohms, origin } = part;
      const bare = { kind, a: node(a), b: node(b), ohms, gate: gate(part.gate), origin } as const;
      return part.fuse || part.lumped ? { ...part, ...bare } : bare;
    }
    case 'pullUp': {
      const fedFrom = part.fedFrom === null ? null : node(part.fedFrom);
      return { ...part, node: node(part.node), reference: node(part.reference), fedFrom, gate: gate(part.gate) };
    }
    case 'diode':
      return { ...part, anode: node(part.anode), cathode: node(part.cathode), gate: gate(part.gate) };
    case 'load': {
      const states = part.states.map((state) => ({ ...state, gate: gate(state.gate) }));
      return { ...part, plus: node(part.plus), minus: node(part.minus), gate: gate(part.gate), states };
    }
    case 'supply':
      return { ...part, plus: node(part.plus), minus: node(part.minus), gate: gate(part.gate) };
  }
}

const keep = (gate: Gate): Gate => gate;
