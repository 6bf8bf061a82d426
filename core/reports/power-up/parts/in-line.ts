import { isOutdoor } from '../../../station/outdoors.ts';
import { findCable } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { wiresOf } from '../../whereabouts.ts';
import type { Context, FedUnit } from '../context.ts';
import { seenIn } from '../setup.ts';
import { fromAmps } from './drop-steps.ts';
import { isMetered } from './meter-steps.ts';
import { type Sending, sendingIn, sendingsIn } from './senders.ts';
import { reasonsNotTo } from './sending-steps.ts';

/** Each transmitter that may send into the dummy load. */
const testsOf = (context: Context): Sending[] =>
  context.dummy ? sendingsIn(context, context.dummy).filter((one) => reasonsNotTo(context, one).length === 0) : [];

const isIndoors = ({ station }: Context, { a, b }: Cable): boolean =>
  [a, b].every(({ unit }) => !isOutdoor(station, unit));

/** The leads between a transmitter and the dummy load, where a meter in the line shows what they do. */
export function cablesToDummy(context: Context): Cable[] {
  const steps = testsOf(context)
    .filter(({ chain }) => isMetered(chain))
    .flatMap(({ chain }) => chain.steps);
  const ids = new Set(steps.flatMap(({ edge: { origin } }) => (origin.type === 'cable' ? [origin.cable] : [])));
  return [...ids].flatMap((id) => {
    const cable = findCable(context.station, id);
    return cable && isIndoors(context, cable) ? [cable] : [];
  });
}

/** Half of what gets through with power on is still a way through. */
const passes = 0.5;

/** Units in the line, with a plug for their power, that pass what is sent without it as well. */
export function passingUnpowered(context: Context): FedUnit[] {
  const tests = testsOf(context).filter(({ chain }) => isMetered(chain));
  const found = tests.flatMap((sending) => {
    const inLine = new Set(
      sending.chain.steps.flatMap(({ edge: { origin } }) => (origin.type === 'element' ? [origin.unit] : [])),
    );
    const wattsOf = (one: Sending) => Math.max(0, ...one.chain.ends.map(({ watts }) => watts));
    return context.fed.filter(({ unit, cable, end }) => {
      if (unit === sending.unit || !inLine.has(unit)) return false;
      const without = sendingIn(sending, { ...sending.setup, pulled: [{ cable: cable.id, end }] });
      // An amplifier’s gain goes with its power.
      return without !== null && wattsOf(without) >= passes * Math.min(wattsOf(sending), sentBy(sending));
    });
  });
  return [...new Set(found)];
}

const sentBy = ({ chain }: Sending): number => chain.ports[0]?.forwardWatts ?? 0;

/** The power leads that get warm at a bad joint while a transmitter sends, and for how many seconds it may be held. */
export function loadedLeads(context: Context): { readonly cables: readonly Cable[]; readonly seconds: number } {
  const tests = testsOf(context);
  const seconds = tests.flatMap(({ chain }) =>
    chain.ends.flatMap(({ load: { spec }, watts }) =>
      watts > (spec.watts ?? Number.POSITIVE_INFINITY) ? [spec.shortSeconds ?? 0] : [],
    ),
  );
  const isLoaded = ({ id }: Cable) =>
    tests.some(({ setup, reach }) =>
      wiresOf(seenIn(setup).circuit, id).some(({ index }) => Math.abs(reach.dc.ampsIn(index)) > fromAmps),
    );
  const cables = context.station.cables.filter((cable) => isIndoors(context, cable) && isLoaded(cable));
  return { cables, seconds: Math.min(60, ...seconds) };
}
