import type { Circuit, LoadPart } from '../../circuit/circuit.ts';
import { kindOf, placeOfContact, portName, unitOf } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import type { Station } from '../../station/schema/schema.ts';
import { fixedConductors, joinedTo } from '../../trial/conductors.ts';
import { isFeed, loadsOf, unitOfPart } from '../../trial/parts.ts';
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
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        const { circuit } = trial;
        for (const { part } of loadsOf(circuit)) {
          if (isFeed(part) || part.spec.law !== 'resistance' || isCaught(circuit, part)) continue;
          const line = joinedTo(fixedConductors(circuit), part.minus);
          for (const { node, ...output } of transistorsOf(station, circuit)) {
            if (!line.has(node)) continue;
            const coil = unitOfPart(part);
            report({
              message: 'bare',
              severity: 'doubt',
              at: [output, placeOfContact(coil, part.spec.minus)],
              values: { switch: portName(station, output), coil: unitOf(station, coil).name },
              hookup: hookup.id,
            });
          }
        }
      }
    },
  },
});

/** A diode lies across the coil, blocking while it is fed. */
const isCaught = (circuit: Circuit, coil: LoadPart): boolean =>
  circuit.parts.some((p) => p.kind === 'diode' && p.anode === coil.minus && p.cathode === coil.plus);

/** The transistor outputs of a circuit: their port, and the node that they pull. */
const outputs = remember((circuit: Circuit) =>
  circuit.parts.flatMap((part) =>
    part.kind === 'resistor' && part.origin.type === 'element' && part.gate.length > 0
      ? [{ part, ...part.origin }]
      : [],
  ),
);

const transistorsOf = (station: Station, circuit: Circuit) =>
  outputs(circuit).flatMap(({ part, unit, element }) => {
    const pair = kindOf(station, unitOf(station, unit)).elements.find((e) => e.id === element);
    const isTransistor = pair?.type === 'contactPair' && pair.device === 'transistor';
    return isTransistor ? [{ ...placeOfContact(unit, pair.from), node: part.a }] : [];
  });
