import type { RfLoad } from '../../../circuit/circuit.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesAt, kindOf, portName, unitName, unitOf } from '../../../station/parts.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { rfPortRef } from '../../../trial/contact-at.ts';
import { type Context, wholeSetup } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { isOwn } from '../own-figures.ts';
import { ohmsBetween } from '../probes.ts';
import { circuitOf } from '../setup.ts';
import { insulationOhms } from './lead-steps.ts';

/**
 * Whether a load's ohms for DC are known: an antenna whose figures are only typical may be open, or closed by its matching
 * (a hairpin, a gamma rod, most baluns). Common practice.
 */
const isKnown = (station: Station, { unit, spec }: RfLoad): boolean =>
  spec.role !== 'antenna' || spec.dcOhms !== undefined || isOwn(station, unit, `${spec.id}.ohms`);

/** Centre to braid of the coax to every antenna and dummy load, in whichever hook-up it is plugged in: open, or its ohms. */
export function feederSteps(context: Context): DraftStep[] {
  const { station, facts } = context;
  const told = new Set<string>();
  return facts.hookups.flatMap(({ hookup, trial }) =>
    trial.circuit.rf.loads.flatMap((load): DraftStep[] => {
      const at = rfPortRef(trial.circuit, load.port);
      const cable = cablesAt(station, hookup, at.unit, at.port)[0];
      // An active antenna shows its amplifier.
      const isActive = kindOf(station, unitOf(station, at.unit)).elements.some((e) => e.type === 'load');
      if (load.spec.role === 'receiver' || isActive || !cable || told.has(cable.id)) return [];
      told.add(cable.id);
      const end = otherEnd(cable.a.unit === at.unit ? 'a' : 'b');
      const setup = wholeSetup(context, hookup, { pulled: [{ cable: cable.id, end }], powered: false });
      const port = `${cable[end].unit}.${cable[end].port}`;
      const plug = plugContacts(circuitOf(setup), { cable: cable.id, end }, `${port}.centre`, `${port}.shell`);
      if (!plug) return [];
      return reading({
        id: `feeder/${cable.id}`,
        text: `${cable.number} out of ${portName(station, cable[end])}${isOutdoor(station, at.unit) ? ', first its centre touched to its shell, away from your fingers: a line that hung open charges itself up' : ''}: centre to braid, through to ${unitName(station, at.unit)}. ${isOutdoor(station, at.unit) ? 'Move it at every plug within reach from the ground: nothing jumps.' : 'Shake it at every plug: nothing jumps.'}${isKnown(station, load) ? '' : ' Open or nearly a short, by how the antenna is matched: write it down, it stays so.'}`,
        where: portName(station, cable[end]),
        at: [{ cable: cable.id, end }],
        taking: { setup, probe: ohmsBetween(...plug) },
        quantity: 'ohm',
        openFrom: insulationOhms,
        ...(isKnown(station, load) ? {} : { anyOhms: true }),
      });
    }),
  );
}
