import type { Circuit, CircuitPart, Origin, Resistor } from '../circuit/circuit.ts';
import type { Cable } from '../station/schema/schema.ts';
import type { Numbered } from './parts.ts';

/** Where a contact of a plug meets that of a jack. */
export type JointPart = Resistor & { readonly origin: Extract<Origin, { type: 'mate' }> };

/** The parts that a unit brings with it: its elements, and what joins its contacts to its metal. */
export const partsOfUnit = (circuit: Circuit, unit: string): readonly Numbered<CircuitPart>[] =>
  partsOf(circuit, `unit ${unit}`);

/** The parts that a cable brings with it: the joints of its plugs, its conductors and its fuse. */
export const partsOfCable = (circuit: Circuit, cable: string): readonly Numbered<CircuitPart>[] =>
  partsOf(circuit, `cable ${cable}`);

function partsOf({ placed, parts }: Circuit, name: string): Numbered<CircuitPart>[] {
  const own = placed.get(name);
  return (own?.parts ?? []).map((_, i) => {
    const index = (own?.first.part ?? 0) + i;
    return { index, part: parts[index] as CircuitPart };
  });
}

/** The joints at a unit's ports of the plugs of these cables. */
export const jointsAt = (circuit: Circuit, cables: readonly Cable[], unit: string): readonly Numbered<JointPart>[] =>
  cables.flatMap(({ id }) =>
    partsOfCable(circuit, id).filter(
      (own): own is Numbered<JointPart> => own.part.origin.type === 'mate' && own.part.origin.unit === unit,
    ),
  );
