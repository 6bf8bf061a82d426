import { formatVolts, formatWatts } from '../../../quantity/format.ts';
import type { Finding } from '../../../rules/finding.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { placeOfContact, portName, unitName } from '../../../station/parts.ts';
import { isFeed, loadsOf, loadVolts, unitOfPart } from '../../../trial/parts.ts';
import { isFoundIn, isPressing } from '../../is-pressing.ts';
import { isForTips, reachWords } from '../contacts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, doing, reading } from '../draft-step.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { seenIn, trialOf } from '../setup.ts';
import { chargeRange } from '../tolerance.ts';
import { dropSteps } from './drop-steps.ts';
import { carrier, driveWords, firstPowerSteps } from './first-power-steps.ts';
import { meterSteps } from './meter-steps.ts';
import type { Sending } from './senders.ts';

/**
 * What to read while one transmitter sends: first at its lowest power, then the supplies, the meters in the line, and what
 * has not been read in the test: the units that the press changes, and the drops on the way to them. Where the drawing
 * itself would not stand it, one step that says why nobody is to key.
 */
export function sendingSteps(context: Context, part: string, sending: Sending, isTested = false): DraftStep[] {
  const { unit, control } = sending;
  const name = unitName(context.station, unit);
  const wrong = reasonsNotTo(context, sending);
  if (wrong.length > 0) {
    const [told, more] = [wrong.slice(0, mostTold).join('; '), wrong.length - mostTold];
    const others = more > 0 ? ` (and ${more} more)` : '';
    const text = `Do not press ${control}: as drawn: ${told}${others}. Put that right first, and go on with a sheet made anew.`;
    return [doing({ id: `${part}/${unit}/stop`, text, at: [{ unit }] })];
  }
  const first = firstPowerSteps(context, part, sending, isTested);
  return [
    ...first,
    holdStep(context, part, sending, first.length > 0),
    ...supplySteps(context, part, sending),
    ...(isTested ? [] : powerSteps(context, part, sending)),
    ...meterSteps(context, part, sending),
    doing({
      id: `${part}/${unit}/back`,
      text: `Let go of ${control}: ${name} stops, and you hear the receiver again.`,
    }),
  ];
}

/** What of the power is read once, into the dummy load: it is the same on the air. */
function powerSteps(context: Context, part: string, sending: Sending): DraftStep[] {
  const { unit, control } = sending;
  return [
    ...loadSteps(context, part, sending),
    ...dropSteps(
      context,
      { part: `${part}/${unit}`, setup: sending.setup, when: `, ${control} held` },
      changedLoads(sending),
    ),
  ];
}

/** Reasons not to press a control that one step names. */
const mostTold = 3;

/** Less than this and a unit is switched off rather than starved. */
const offVolts = 0.5;

/** What in the station would not stand it, or not work, while this transmitter sends. */
export function reasonsNotTo({ station, facts }: Context, sending: Sending): string[] {
  const { chain, setup } = sending;
  const ends = chain.ends.flatMap(({ load, watts }) => {
    const most = Math.max(load.spec.watts ?? Number.POSITIVE_INFINITY, load.spec.shortWatts ?? 0);
    return watts > most
      ? [`${unitName(station, load.unit)} gets ${formatWatts(watts)} and stands ${formatWatts(most)}`]
      : [];
  });
  const ways = chain.steps.flatMap(({ edge: { maxWatts, origin, lossDb }, from }) => {
    const watts = chain.ports.find(({ port }) => port === from)?.forwardWatts ?? 0;
    if (maxWatts === null || origin.type !== 'element' || lossDb < 0 || watts <= maxWatts) return [];
    return [`${unitName(station, origin.unit)} gets ${formatWatts(watts)} and stands ${formatWatts(maxWatts)}`];
  });
  const loads = changedLoads(sending).flatMap(({ part }) => {
    const volts = loadVolts(sending.reach, part);
    const { minV, maxV } = part.spec;
    // A preamplifier’s power goes away while it sends, as it should.
    const isOff = Math.abs(volts) < offVolts;
    if (isOff || (volts >= minV && volts <= maxV)) return [];
    return [`${unitName(station, unitOfPart(part))} gets ${formatVolts(volts)} and works on ${minV} to ${maxV} V`];
  });
  const here = [...new Set([...ends, ...ways, ...loads])];
  if (here.length > 0) return here;
  const wrong = facts.findings.filter(
    (finding) => isPressing(finding) && endangersSending(finding) && isFoundIn(finding, setup.hookup.id),
  );
  return wrong.map(({ message }) => message.replace(/\.$/, ''));
}

/** A receiver that is not muted, or a unit without power, is no reason not to try the transmitter. */
export const endangersSending = ({ severity, rule }: Finding): boolean =>
  severity === 'danger' || rule.startsWith('rf/');

/** The units whose volts or amperes a press changes. */
function changedLoads({ setup, reach }: Sending) {
  const rest = trialOf({ ...setup, control: null }).receive;
  return loadsOf(seenIn(setup).circuit).filter(({ part, index }) => {
    const changed = Math.abs(reach.dc.ampsIn(index) - rest.dc.ampsIn(index)) > 1e-4;
    return isFeed(part) && (changed || Math.abs(loadVolts(reach, part) - loadVolts(rest, part)) > 0.005);
  });
}

/** How long it may be held: a load has watts that it stands for good, and more for a while. */
function holdStep({ station }: Context, part: string, sending: Sending, wasLow: boolean): DraftStep {
  const { chain, unit, control } = sending;
  const limits = chain.ends.flatMap(({ load, watts }): string[] => {
    const { watts: good, shortSeconds } = load.spec;
    if (good === undefined || watts <= good) return [];
    const time = shortSeconds === undefined ? 'for moments only' : `no longer than ${shortSeconds} s`;
    return [`${time}: ${unitName(station, load.unit)} stands ${good} W for good`];
  });
  const { most, plate } = driveWords(station, sending);
  const power = wasLow ? `All well? ${unitName(station, unit)} up to full power` : unitName(station, unit);
  const how = wasLow ? '' : ', on a clear frequency';
  const time = limits.length > 0 ? `, ${limits.join(', ')}` : ' only as long as the readings take';
  const text = `${power}${how}${most}. Hold ${control}${wasLow ? '' : ` ${carrier}`}${time}.${plate}`;
  return doing({ id: `${part}/${unit}/hold`, text, at: [{ unit }] });
}

function supplySteps(context: Context, part: string, { setup, unit, control, reach }: Sending): DraftStep[] {
  const { station } = context;
  const rest = trialOf({ ...setup, control: null }).receive;
  return context.supplies.flatMap(({ part: supply, index }): DraftStep[] => {
    // The same supply has the same number in every hook-up: units are counted before cables.
    const from = unitOfPart(supply);
    const changes = Math.abs(reach.dc.ampsIn(index) - rest.dc.ampsIn(index)) >= 1e-4;
    if (!changes || isOutdoor(station, from)) return [];
    const { id, plus, minus } = supply.spec;
    const shared = { where: unitName(station, from), at: [{ unit: from }] };
    return [
      ...reading({
        ...shared,
        range: chargeRange(setup, ampsOf(from, id)),
        id: `${part}/${unit}/${from}.${id}/amps`,
        text: `Amperes out of ${unitName(station, from)} while ${control} is held.`,
        taking: { setup, probe: ampsOf(from, id) },
        quantity: 'A',
        figure: drawFigure(station, setup, { unit, supply }, `${unitName(station, unit)}’s draw while sending`),
      }),
      ...reading({
        ...shared,
        id: `${part}/${unit}/${from}.${id}/volts`,
        text: `Volts of ${unitName(station, from)} then.`,
        taking: { setup, probe: voltsAt(`${from}.${plus}`, `${from}.${minus}`) },
        quantity: 'V',
      }),
    ];
  });
}

/**
 * Volts at the terminals of the units that draw more or less then: a bad joint shows here and nowhere else. Nobody reads
 * anything outdoors while it sends.
 */
function loadSteps({ station }: Context, part: string, sending: Sending): DraftStep[] {
  const { setup, unit: sender, control } = sending;
  const loads = changedLoads(sending).filter(({ part: load }) => {
    const { unit, port } = placeOfContact(unitOfPart(load), load.spec.plus);
    return !isOutdoor(station, unit) && port !== undefined && isForTips(station, { unit, port });
  });
  return loads.flatMap(({ part: load }): DraftStep[] => {
    const unit = unitOfPart(load);
    const { id, plus, minus } = load.spec;
    const place = placeOfContact(unit, plus);
    return reading({
      id: `${part}/${sender}/${unit}.${id}/volts`,
      text: `Volts at ${portName(station, place)} while ${control} is held${place.port === undefined ? '' : reachWords(station, { unit, port: place.port })}.`,
      where: portName(station, place),
      at: [place],
      taking: { setup, probe: voltsAt(`${unit}.${plus}`, `${unit}.${minus}`) },
      quantity: 'V',
    });
  });
}
