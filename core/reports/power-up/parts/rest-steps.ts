import { cablesIn, portName, portOf, portOfRef } from '../../../station/parts.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import { type Context, setupWithout } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { ohmsBetween } from '../probes.ts';
import { circuitOf } from '../setup.ts';

/** A key or relay contact that has hung up shows as a short; some electronics shows a little (common practice). */
const lineOhms = 1000;

/** What hangs on each line with nobody at it, seen from the unit that feeds it. */
export function restSteps(context: Context): DraftStep[] {
  const { station, base } = context;
  return cablesIn(station, base.hookup).flatMap((cable) => {
    const { circuit } = base.trial;
    const fedEnd = (['a', 'b'] as const).find((end) => {
      const { unit, port } = cable[end];
      return circuit.parts.some(
        (p) => p.kind === 'pullUp' && unitOfPart(p) === unit && portOfRef(p.spec.contact) === port,
      );
    });
    if (!fedEnd || portOf(station, cable[fedEnd]).port.class !== 'control') return [];
    const setup = setupWithout(context, new Set(), { powered: false, pulled: [{ cable: cable.id, end: fedEnd }] });
    const back = nodeOfRole(station, cable[fedEnd], 'return');
    // A paddle has two levers.
    return (['live', 'second'] as const).flatMap((role): DraftStep[] => {
      const live = nodeOfRole(station, cable[fedEnd], role);
      const plug = plugContacts(circuitOf(setup), { cable: cable.id, end: fedEnd }, live, back);
      if (!plug) return [];
      return reading({
        id: `line/${cable.id}/${role === 'live' ? 'ohms' : 'second'}`,
        text: `${cable.number} out of ${portName(station, cable[fedEnd])}, nobody at a control: ${contactName(station, live)} to ${contactName(station, back)} of its plug, towards ${portName(station, cable[otherEnd(fedEnd)])}.`,
        where: portName(station, cable[fedEnd]),
        at: [{ cable: cable.id, end: fedEnd }],
        taking: { setup, probe: ohmsBetween(...plug) },
        quantity: 'ohm',
        openFrom: lineOhms,
      });
    });
  });
}
