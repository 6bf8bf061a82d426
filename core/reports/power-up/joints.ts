import type { Circuit } from '../../circuit/circuit.ts';
import type { CableEnd } from '../../station/schema/schema.ts';

/** The names of the plug's contacts that touch two contacts of a port; null where one of them touches nothing. */
export function plugContacts(
  circuit: Circuit,
  { cable, end }: { readonly cable: string; readonly end: CableEnd },
  plus: string,
  minus: string,
): readonly [plus: string, minus: string] | null {
  const touching = (name: string) => {
    const node = circuit.nodeOf.get(name);
    const joint = circuit.parts.find(
      (part) =>
        part.kind === 'resistor' &&
        part.origin.type === 'mate' &&
        part.b === node &&
        part.origin.cable === cable &&
        part.origin.end === end,
    );
    return joint?.kind === 'resistor' ? circuit.nodes[joint.a] : undefined;
  };
  const [one, two] = [touching(plus), touching(minus)];
  return one === undefined || two === undefined ? null : [one, two];
}

export const otherEnd = (end: CableEnd): CableEnd => (end === 'a' ? 'b' : 'a');
