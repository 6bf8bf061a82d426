import { type Circuit, type CircuitPart, never, type RfEdge } from '../circuit/circuit.ts';
import type { Failure } from './failure.ts';

/** The circuit with something failed: the same nodes, parts and actors in the same places, what failed set so. */
export function applyFailure(circuit: Circuit, { parts: broken, held, volts }: Failure): Circuit {
  const parts = circuit.parts.map((part, i): CircuitPart => {
    if (broken.includes(i)) return { ...part, gate: never };
    const high = volts.get(i);
    return part.kind === 'supply' && high !== undefined ? { ...part, spec: { ...part.spec, volts: high } } : part;
  });
  const actors = circuit.actors.map((actor, i) => {
    const stuck = held.get(i);
    return stuck === undefined ? actor : { ...actor, stuck };
  });
  return { ...circuit, parts, actors, rf: withoutLines(circuit, broken) };
}

/** RF does not pass a cable whose live core is open. */
function withoutLines({ parts, rf }: Circuit, broken: readonly number[]): Circuit['rf'] {
  const cut = new Set(broken.flatMap((i) => liveCableOf(parts[i]) ?? []));
  const isCut = ({ origin }: RfEdge) => origin.type === 'cable' && cut.has(origin.cable);
  if (!rf.edges.some(isCut)) return rf;
  return { ...rf, edges: rf.edges.map((edge) => (isCut(edge) ? { ...edge, gate: never } : edge)) };
}

/** The cable whose live way a part is on, or undefined. */
function liveCableOf(part: CircuitPart | undefined): string | undefined {
  if (part?.kind !== 'resistor') return undefined;
  const { origin } = part;
  if (origin.type === 'wire') return origin.role === 'live' ? origin.cable : undefined;
  if (origin.type === 'cableFuse') return origin.cable;
  // RF connectors all call their live contact the centre.
  return origin.type === 'mate' && origin.contact === 'centre' ? origin.cable : undefined;
}
