import type { Circuit, CircuitActor, Resistor } from '../../circuit/circuit.ts';
import { metalGroups } from '../../circuit/metal-groups.ts';
import { unitName } from '../../station/parts.ts';
import { portAt } from '../../trial/contact-at.ts';
import { unitOfPart } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

export const tripsUnderPower = defineRule({
  id: 'keying/trips-under-power',
  severity: 'doubt',
  title: 'A protection that opens a relay under power',
  compares:
    'contacts that RF moves, whose key line they open: a transmitter’s, or only an amplifier’s or a changeover’s',
  why: 'It lets the relay fall at the very moment of full power and high SWR: the contacts burn, and the transmitter sends on.',
  advice: 'Let the protection open the transmitter’s key line, so that RF stops first and the relay follows.',
  source: 'common practice: RF off first, then the relay',
  follows: [],
  messages: {
    trips: '{protection} opens the key line of {relay} while RF flows, and the transmitter goes on sending.',
  },
  looksAt: {
    // The line that a contact opens may be anybody's.
    hookup(_, { station, trial: { circuit } }, report) {
      for (const contact of rfContacts(circuit)) {
        const [keyed, sends] = linesOf(circuit, contact);
        const [relay] = keyed;
        const unit = unitOfPart(contact);
        if (!relay || sends || relay.unit === unit) continue;
        report({
          message: 'trips',
          severity: 'doubt',
          at: [{ unit }, { unit: relay.unit }],
          values: { protection: unitName(station, unit), relay: unitName(station, relay.unit) },
        });
      }
    },
  },
});

/** Contacts between two ports of a unit that an actor moves which feels RF. */
function rfContacts(circuit: Circuit): Resistor[] {
  const { parts, actors } = circuit;
  const feelsRf = actors.map(({ feels }) => feels.some((f) => f.type === 'rfAbove'));
  if (!feelsRf.includes(true)) return [];
  const portOf = (node: number) => portAt(circuit, node)?.port;
  return parts.flatMap((part): Resistor[] => {
    if (part.kind !== 'resistor' || part.origin.type !== 'element' || part.lumped) return [];
    const moved = part.gate.some(({ actor }) => feelsRf[actor]);
    return moved && portOf(part.a) !== portOf(part.b) ? [part] : [];
  });
}

/** The relays whose lines a contact leads to, and whether a transmitter's line is among them. */
function linesOf(circuit: Circuit, { a, b }: Resistor): [CircuitActor[], boolean] {
  const groupOf = metalGroups(circuit);
  const groups = [groupOf(a), groupOf(b)];
  const feels = (actor: CircuitActor) =>
    actor.feels.some(
      (f) => (f.type === 'voltageBelow' || f.type === 'voltageAbove') && groups.includes(groupOf(f.node)),
    );
  const lines = circuit.actors.filter(feels);
  return [lines.filter((l) => l.does === 'changesOver'), lines.some((l) => l.does === 'sends')];
}
