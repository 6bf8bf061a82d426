import type { Circuit, CircuitActor, Resistor } from '../../circuit/circuit.ts';
import { metalGroups } from '../../circuit/metal-groups.ts';
import { unitName } from '../../station/parts.ts';
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
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        const { circuit } = trial;
        for (const contact of rfContacts(circuit)) {
          const [keyed, sends] = linesOf(circuit, contact);
          const [relay] = keyed;
          if (!relay || sends) continue;
          const unit = unitOfPart(contact);
          if (relay.unit === unit) continue;
          report({
            message: 'trips',
            severity: 'doubt',
            at: [{ unit }, { unit: relay.unit }],
            values: { protection: unitName(station, unit), relay: unitName(station, relay.unit) },
            hookup: hookup.id,
          });
        }
      }
    },
  },
});

/** Contacts between two ports of a unit that an actor moves which feels RF. */
const rfContacts = ({ parts, actors, nodes }: Circuit): Resistor[] =>
  parts.flatMap((part): Resistor[] => {
    if (part.kind !== 'resistor' || part.origin.type !== 'element' || part.lumped) return [];
    const moved = part.gate.some(({ actor }) => actors[actor]?.feels.some((f) => f.type === 'rfAbove'));
    const portOf = (node: number) => nodes[node]?.split('.').at(-2);
    return moved && portOf(part.a) !== portOf(part.b) ? [part] : [];
  });

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
