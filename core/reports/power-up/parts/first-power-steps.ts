import { counted } from '../../../quantity/counted.ts';
import { wattsFromDbm } from '../../../quantity/decibel.ts';
import { formatAmps, formatWatts } from '../../../quantity/format.ts';
import { cablesAt, kindOf, unitName, unitOf } from '../../../station/parts.ts';
import type { Cable, CableEnd, Station } from '../../../station/schema/schema.ts';
import type { ElementOf } from '../../../station/schema/unit-kind.ts';
import { rfPortRef } from '../../../trial/contact-at.ts';
import type { Context } from '../context.ts';
import { type DraftStep, doing } from '../draft-step.ts';
import { type Setup, seenIn } from '../setup.ts';
import { isMetered, meterSteps, metersIn } from './meter-steps.ts';
import { type Sending, sendingIn } from './senders.ts';

/** A meter follows neither a keyer’s dits nor speech. Common practice. */
export const carrier =
  'with a steady carrier: key down, FM, or the tune tone of keyer, program or radio (dits and speech read low)';

/**
 * What goes before full power: the amplifiers in the line on standby, then the transmitter at the lowest power that it
 * can be turned down to, with what the meters show at it. Nothing where it has one power and no amplifier follows; once
 * that has been tested nothing on standby.
 */
export function firstPowerSteps(context: Context, part: string, sending: Sending, isTested: boolean): DraftStep[] {
  const { station } = context;
  const { unit, control } = sending;
  const name = unitName(station, unit);
  const low = lowest(station, sending);
  const amplifiers = amplifiersIn(station, sending);
  if (low.isOnly && amplifiers.length === 0) return [];
  const words = low.watts === null ? 'at its lowest power' : `at its lowest power, ${formatWatts(low.watts)}`;
  const atLow = sendingIn(sending, low.setup);
  const hold = `${name} ${low.isOnly ? 'as it is' : words}, on a clear frequency. Hold ${control} ${carrier}.`;
  const standing = isTested || !isMetered(sending.chain) ? [] : amplifiers.filter(({ key }) => key !== null);
  const pulled = standing.flatMap(({ key }) => (key ? [{ cable: key.cable.id, end: key.end }] : []));
  const onStandby = pulled.length > 0 ? sendingIn(sending, { ...low.setup, pulled }) : null;
  const keys = standing.map(({ unit: one, key }) => `${key?.cable.number} at ${unitName(station, one)}`).join(', ');
  const read = (at: Sending, id: string) =>
    isMetered(at.chain) ? meterSteps(context, `${part}/${id}`, at, low.isKnown ? 'low' : 'not known') : [];
  return [
    ...(isTested ? [] : amplifiers).flatMap((amplifier) => warmUpStep(station, part, amplifier)),
    ...(onStandby
      ? [
          doing({
            id: `${part}/${unit}/standby`,
            text: `Everything off, ${keys} out, on again: the amplifier stays in standby, and what is sent goes past it. ${hold}`,
            at: standing.map((one) => ({ unit: one.unit })),
          }),
          ...read(onStandby, 'standby'),
          doing({
            id: `${part}/${unit}/keyed`,
            text: `Let go; everything off, ${keys} in again, on${standing.some(({ stage }) => stage.plate) ? ', and valves warm again' : ''}.`,
          }),
        ]
      : []),
    ...(atLow
      ? [
          doing({
            id: `${part}/${unit}/low`,
            text: `${hold}${needleWords(station, atLow)}${tuneWords(station, atLow)}${amplifiers.map((one) => plateWords(station, one, 'restingAmps')).join('')}`,
            at: [{ unit }],
          }),
          ...read(atLow, 'low'),
        ]
      : []),
  ];
}

/** The station with a transmitter turned down as far as it goes, and the watts where they are known. */
function lowest({ units, ...rest }: Station, { setup, unit, element }: Sending) {
  const station = { units, ...rest };
  const source = kindOf(station, unitOf(station, unit)).elements.find((e) => e.id === element);
  const { dbm = 0, minDbm } = source?.type === 'rfSource' ? source : {};
  // A decibel less is no lower power.
  const isOnly = minDbm !== undefined && minDbm > dbm - 1;
  const isKnown = minDbm !== undefined;
  const set = minDbm === undefined || isOnly ? {} : { [`${element}.dbm`]: minDbm };
  const turned = units.map((u) => (u.id === unit ? { ...u, overrides: { ...u.overrides, ...set } } : u));
  const lowSetup: Setup = { ...setup, station: { ...setup.station, units: turned } };
  return { setup: lowSetup, isOnly, isKnown, watts: isKnown ? wattsFromDbm(minDbm) : null };
}

interface Amplifier {
  readonly unit: string;
  readonly stage: ElementOf<'rfPath'>;
  /** The lead that keys it, and its end there; null where there is none, or nothing gets past the stage without it. */
  readonly key: { readonly cable: Cable; readonly end: CableEnd } | null;
}

/** The amplifiers that a transmitter drives. */
function amplifiersIn(station: Station, { setup, chain }: Sending): Amplifier[] {
  return chain.steps.flatMap(({ edge: { spec, origin } }): Amplifier[] => {
    if (spec?.type !== 'rfPath' || spec.lossDb >= 0 || origin.type !== 'element') return [];
    const { unit } = origin;
    const { ports, elements } = kindOf(station, unitOf(station, unit));
    const hasWayPast = elements.some(
      (e) => e.type === 'rfPath' && e.lossDb >= 0 && [e.a, e.b].includes(spec.a) && [e.a, e.b].includes(spec.b),
    );
    const keyed = hasWayPast ? ports.filter((port) => port.class === 'control') : [];
    const cable = keyed.flatMap((port) => cablesAt(station, setup.hookup, unit, port.id))[0];
    const key = cable ? { cable, end: cable.a.unit === unit ? ('a' as const) : ('b' as const) } : null;
    return [{ unit, stage: spec, key }];
  });
}

function warmUpStep(station: Station, part: string, { unit, stage }: Amplifier): DraftStep[] {
  if (!stage.plate) return [];
  const minutes = Math.ceil(stage.plate.warmUpSeconds / 60);
  return [
    doing({
      id: `${part}/${unit}/warm`,
      text: `${unitName(station, unit)} on, in standby: let its valves heat for ${counted(minutes, 'minute')}; its manual goes before this.`,
      at: [{ unit }],
    }),
  ];
}

/** Watts that do not move a meter's needle show no SWR. */
function needleWords(station: Station, at: Sending): string {
  const blind = metersIn(at.chain).filter(({ from, scale }) => {
    const watts = at.chain.ports.find(({ port }) => port === from)?.forwardWatts ?? 0;
    return watts < scale * leastShare;
  });
  const names = blind.map(({ from }) => unitName(station, rfPortRef(seenIn(at.setup).circuit, from).unit));
  return names.length > 0 ? ` Then as much more as ${names.join(', ')} needs to show an SWR.` : '';
}

/** Below this share of its scale a meter's needle hardly leaves its rest. Common practice. */
const leastShare = 0.1;

/** A tuner is turned, or tunes itself, at low power: into an antenna there is nothing to expect before. */
function tuneWords(station: Station, { chain }: Sending): string {
  const hasAntenna = chain.ends.some(({ load }) => load.spec.role === 'antenna');
  return chain.steps
    .map(({ edge: { spec, origin } }, i) => {
      if (spec?.type !== 'matcher' || origin.type !== 'element') return '';
      const name = unitName(station, origin.unit);
      if (!hasAntenna) return ` ${name} in bypass, where it can be.`;
      const most = spec.maxTuneWatts === undefined ? '' : `, with no more than ${formatWatts(spec.maxTuneWatts)}`;
      // A meter on its far side shows nothing of it.
      const before = chain.steps.slice(0, i);
      const isSeen = before.some(({ edge }) => edge.spec?.type === 'rfPath' && edge.spec.scaleWatts !== undefined);
      if (isSeen) return ` Tune ${name} for the least SWR now${most}.`;
      return ` Tune ${name} now${most}, by its own lamp or until it has settled.`;
    })
    .join('');
}

/** What the amplifier's own meter shows. */
function plateWords(station: Station, { unit, stage }: Amplifier, at: 'restingAmps' | 'drivenAmps'): string {
  if (!stage.plate) return '';
  return ` Its own meter: ${unitName(station, unit)} draws some ${formatAmps(stage.plate[at])} of plate current; let go at once if it is far off.`;
}

/** How far an amplifier is driven at full power, and what its meter shows then; empty where there is none. */
export const driveWords = (station: Station, sending: Sending): { readonly most: string; readonly plate: string } => {
  const amplifiers = amplifiersIn(station, sending);
  const most = amplifiers.flatMap(({ unit, stage: { maxWatts } }) =>
    maxWatts === undefined ? [] : [`, no more than ${formatWatts(maxWatts)} into ${unitName(station, unit)}`],
  );
  return { most: most.join(''), plate: amplifiers.map((one) => plateWords(station, one, 'drivenAmps')).join('') };
};
