import { type Circuit, type CircuitActor, type CircuitPart, never } from '../circuit/circuit.ts';
import { replaceIn } from '../circuit/replace-in.ts';
import type { Failure } from './failure.ts';

/**
 * The circuit with something failed: the same nodes, parts and actors in the same places, what failed set so. RF does not
 * pass a cable whose live core is open.
 */
export function applyFailure(circuit: Circuit, { parts: broken, held, volts }: Failure): Circuit {
  const at = (i: number) => circuit.parts[i] as CircuitPart;
  const open = broken.map((i): [number, CircuitPart] => [i, { ...at(i), gate: never }]);
  const high = [...volts].flatMap(([i, high]): [number, CircuitPart][] => {
    const part = at(i);
    return part.kind === 'supply' ? [[i, { ...part, spec: { ...part.spec, volts: high } }]] : [];
  });
  const stuck = [...held].map(([i, on]): [number, CircuitActor] => [
    i,
    { ...(circuit.actors[i] as CircuitActor), stuck: on },
  ]);
  const cut = broken.flatMap((i) => liveCableOf(circuit.parts[i]) ?? []);
  return replaceIn(circuit, {
    parts: new Map([...high, ...open]),
    actors: new Map(stuck),
    edges: new Map(cut.map((cable) => [cable, (edge) => ({ ...edge, gate: never })])),
  });
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
