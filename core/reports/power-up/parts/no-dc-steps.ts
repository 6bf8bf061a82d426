import { isOutdoor } from '../../../station/outdoors.ts';
import { classOf, portName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { voltsAt } from '../probes.ts';
import { circuitOf, type Setup } from '../setup.ts';

/** On the radio's side of an injector there is no DC: read where something outdoors gets its power through the coax. */
export function noDcSteps(context: Context, setup: Setup, unit: string, others: readonly Cable[]): DraftStep[] {
  const { station, fed } = context;
  if (!fed.some((one) => isOutdoor(station, one.unit))) return [];
  return others.flatMap((cable): DraftStep[] => {
    if (classOf(station, cable) !== 'rf') return [];
    const end = cable.a.unit === unit ? 'a' : 'b';
    const out: Setup = { ...setup, pulled: [...setup.pulled, { cable: cable.id, end }] };
    const [live, back] = [nodeOfRole(station, cable[end], 'live'), nodeOfRole(station, cable[end], 'return')];
    const contacts = plugContacts(circuitOf(out), { cable: cable.id, end }, live, back);
    if (!contacts || isOutdoor(station, cable[otherEnd(end)].unit)) return [];
    return reading({
      id: `unit/${unit}/${cable.id}/dc`,
      text: `Plug of ${cable.number}, before it goes into ${portName(station, cable[end])}: ${contactName(station, live)} against ${contactName(station, back)}; the power for outdoors stays on its own side.`,
      where: portName(station, cable[end]),
      at: [{ cable: cable.id, end }],
      taking: { setup: out, probe: voltsAt(...contacts) },
      quantity: 'V',
    });
  });
}
