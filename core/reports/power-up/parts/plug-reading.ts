import { portName } from '../../../station/parts.ts';
import type { Cable, CableEnd, Station } from '../../../station/schema/schema.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { plugContacts } from '../joints.ts';
import { voltsAt } from '../probes.ts';
import { circuitOf, type Setup, seenIn } from '../setup.ts';

/** Less on a plug is what leaks. */
const leastVolts = 0.5;

/** Volts on a plug before it goes in; nothing where none are on it. */
export function plugReading(
  station: Station,
  setup: Setup,
  plug: { readonly cable: Cable; readonly end: CableEnd },
): DraftStep[] {
  const { cable, end } = plug;
  const pulled = [...setup.pulled, { cable: cable.id, end }];
  const out: Setup = { ...setup, pulled };
  const [live, back] = [nodeOfRole(station, cable[end], 'live'), nodeOfRole(station, cable[end], 'return')];
  const contacts = plugContacts(circuitOf(out), { cable: cable.id, end }, live, back);
  if (!contacts || Math.abs(voltsAt(...contacts)(seenIn(out)) ?? 0) < leastVolts) return [];
  return reading({
    id: `plug/${cable.id}.${end}`,
    text: `red tip on its ${contactName(station, live)}, black on its ${contactName(station, back)}; a minus sign means swapped.`,
    where: portName(station, cable[end]),
    at: [{ cable: cable.id, end }],
    taking: { setup: out, probe: voltsAt(...contacts) },
    quantity: 'V',
  });
}
