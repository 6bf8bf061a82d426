import type { Circuit, CircuitPart, Origin, Resistor, RfSource } from '../circuit/circuit.ts';
import { remember } from '../station/remember.ts';
import type { Cable } from '../station/schema/schema.ts';
import type { Numbered } from './parts.ts';

/** Where a contact of a plug meets that of a jack. */
export type JointPart = Resistor & { readonly origin: Extract<Origin, { type: 'mate' }> };

/** By `unit ID` and `cable ID`, in the circuit's order. */
const partsByOwner = remember(({ parts }: Circuit): ReadonlyMap<string, readonly Numbered<CircuitPart>[]> => {
  const owned = new Map<string, Numbered<CircuitPart>[]>();
  parts.forEach((part, index) => {
    const { origin } = part;
    const owner = 'cable' in origin ? `cable ${origin.cable}` : `unit ${origin.unit}`;
    const own = owned.get(owner);
    if (own) own.push({ index, part });
    else owned.set(owner, [{ index, part }]);
  });
  return owned;
});

/** The parts that a unit brings with it: its elements, and what joins its contacts to its metal. */
export const partsOfUnit = (circuit: Circuit, unit: string): readonly Numbered<CircuitPart>[] =>
  partsByOwner(circuit).get(`unit ${unit}`) ?? [];

/** The parts that a cable brings with it: the joints of its plugs, its conductors and its fuse. */
export const partsOfCable = (circuit: Circuit, cable: string): readonly Numbered<CircuitPart>[] =>
  partsByOwner(circuit).get(`cable ${cable}`) ?? [];

/** The joints at a unit's ports of the plugs of these cables. */
export const jointsAt = (circuit: Circuit, cables: readonly Cable[], unit: string): readonly Numbered<JointPart>[] =>
  cables.flatMap(({ id }) =>
    partsOfCable(circuit, id).filter(
      (own): own is Numbered<JointPart> => own.part.origin.type === 'mate' && own.part.origin.unit === unit,
    ),
  );

/** What makes RF in a unit, sending or not. */
export const sourcesOfUnit = ({ rf }: Circuit, unit: string): readonly RfSource[] =>
  rf.sources.filter((source) => source.unit === unit);
