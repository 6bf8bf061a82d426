import type { Circuit, LoadPart } from '../../circuit/circuit.ts';
import { kindOf, placeOfContact, portName, unitName, unitOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { fixedConductors, joinedTo } from '../../trial/metal/conductors.ts';
import { partsAt } from '../../trial/metal/parts-at.ts';
import { isFeed, unitOfPart } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

export const backEmf = defineRule({
  id: 'keying/back-emf',
  severity: 'doubt',
  title: 'A relay coil with nothing to catch its kick',
  compares: 'each relay coil that a transistor switches, and whether a diode is declared across it',
  why: 'When the current stops the coil makes a spike of a hundred volts and more; a transistor that switches it dies of that sooner or later.',
  advice:
    'Put a diode across the coil, cathode to plus (a Zener diode in series lets the relay drop out faster), or switch it by a relay contact.',
  source: 'common practice',
  follows: [],
  messages: { bare: '{switch} switches the coil of {coil} by a transistor, and no diode is drawn across the coil.' },
  looksAt: {
    load({ part }, { station, trial: { circuit } }, report) {
      if (isFeed(part) || part.spec.law !== 'resistance' || isCaught(circuit, part)) return;
      const line = joinedTo(fixedConductors(circuit), part.minus);
      for (const output of transistorsAt(station, circuit, line)) {
        const coil = unitOfPart(part);
        report({
          message: 'bare',
          severity: 'doubt',
          at: [output, placeOfContact(coil, part.spec.minus)],
          values: { switch: portName(station, output), coil: unitName(station, coil) },
        });
      }
    },
  },
});

/** A diode lies across the coil, blocking while it is fed. */
const isCaught = (circuit: Circuit, coil: LoadPart): boolean =>
  partsAt(circuit, coil.minus).some(
    ({ part: p }) => p.kind === 'diode' && p.anode === coil.minus && p.cathode === coil.plus,
  );

/** The ports of the transistor outputs that pull one of these nodes, in the circuit's order. */
function transistorsAt(station: Station, circuit: Circuit, nodes: ReadonlySet<number>) {
  const outputs = [...nodes].flatMap((node) =>
    partsAt(circuit, node).filter(({ part }) => part.kind === 'resistor' && part.a === node && part.gate.length > 0),
  );
  return outputs
    .sort((a, b) => a.index - b.index)
    .flatMap(({ part: { origin } }) => {
      if (origin.type !== 'element') return [];
      const pair = kindOf(station, unitOf(station, origin.unit)).elements.find((e) => e.id === origin.element);
      const isTransistor = pair?.type === 'contactPair' && pair.device === 'transistor';
      return isTransistor ? [placeOfContact(origin.unit, pair.from)] : [];
    });
}
