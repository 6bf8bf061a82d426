import { isFeed, loadsOf, loadVolts, placeOfContact, unitName, unitOfPart } from '../../../rules/look.ts';
import { portName } from '../../../station/parts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, doing, reading } from '../draft.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { seenIn, trialOf } from '../setup.ts';
import { meterSteps } from './meters.ts';
import type { Sending } from './senders.ts';

/** What to read while one transmitter sends: the supplies, the units that the press changes, the meters in the line. */
export function sendingSteps(context: Context, part: string, sending: Sending): DraftStep[] {
  const { unit, control } = sending;
  const name = unitName(context.station, unit);
  return [
    ...holdStep(context, part, sending),
    ...supplySteps(context, part, sending),
    ...loadSteps(context, part, sending),
    ...meterSteps(context, part, sending),
    doing({
      id: `${part}/${unit}/back`,
      text: `Let go of ${control}: ${name} stops, and you hear the receiver again.`,
    }),
  ];
}

/** How long it may be held: a load has watts that it stands for good, and more for a while. */
function holdStep({ station }: Context, part: string, { chain, unit, control }: Sending): DraftStep[] {
  const name = unitName(station, unit);
  const limits = chain.ends.flatMap(({ load, watts }): string[] => {
    const { watts: good, shortWatts, shortSeconds } = load.spec;
    if (good === undefined || watts <= good) return [];
    const end = unitName(station, load.unit);
    return shortSeconds && watts <= (shortWatts ?? 0)
      ? [`no longer than ${shortSeconds} s: ${end} stands ${good} W for good`]
      : [`not at this power: ${end} stands ${good} W`];
  });
  const text = `${name} at its lowest power first, listening on a clear frequency. Hold ${control}${limits.length > 0 ? `, ${limits.join(', ')}` : ' only as long as the readings take'}.`;
  return [doing({ id: `${part}/${unit}/hold`, text, at: [{ unit }] })];
}

function supplySteps(context: Context, part: string, { setup, unit, control, reach }: Sending): DraftStep[] {
  const { station } = context;
  const rest = trialOf({ ...setup, control: null }).receive;
  return context.supplies.flatMap(({ part: supply, index }): DraftStep[] => {
    // The same supply has the same number in every hook-up: units are counted before cables.
    if (Math.abs(reach.dc.ampsIn(index) - rest.dc.ampsIn(index)) < 1e-4) return [];
    const from = unitOfPart(supply);
    const { id, plus, minus } = supply.spec;
    const shared = { where: unitName(station, from), at: [{ unit: from }] };
    return [
      ...reading({
        ...shared,
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

/** Volts at the terminals of the units that draw more or less then: a bad joint shows here and nowhere else. */
function loadSteps({ station }: Context, part: string, { setup, unit: sender, control, reach }: Sending): DraftStep[] {
  const { circuit } = seenIn(setup);
  const rest = trialOf({ ...setup, control: null }).receive;
  return loadsOf(circuit).flatMap(({ part: load, index }): DraftStep[] => {
    const changed = Math.abs(reach.dc.ampsIn(index) - rest.dc.ampsIn(index)) > 1e-4;
    if (!isFeed(load) || !(changed || Math.abs(loadVolts(reach, load) - loadVolts(rest, load)) > 0.005)) return [];
    const unit = unitOfPart(load);
    const { id, plus, minus, minV, maxV } = load.spec;
    const place = placeOfContact(unit, plus);
    return reading({
      id: `${part}/${sender}/${unit}.${id}/volts`,
      text: `Volts at its terminals while ${control} is held.`,
      where: portName(station, place),
      at: [place],
      taking: { setup, probe: voltsAt(`${unit}.${plus}`, `${unit}.${minus}`) },
      quantity: 'V',
      limits: { minV, maxV },
    });
  });
}
