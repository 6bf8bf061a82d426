import type { TriedHookup } from '../../../rules/rule.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesIn, classOf } from '../../../station/parts.ts';
import { type Context, type FedUnit, fedUnits } from '../context.ts';
import { type DraftPart, type DraftStep, doing } from '../draft-step.ts';
import { backupSteps } from './backup-steps.ts';
import { indoorSteps } from './indoor-steps.ts';
import { meterWords } from './meter-words.ts';
import { outdoorSteps } from './outdoor-steps.ts';
import { ownPowerSteps, unfedWords } from './own-power-steps.ts';

/** One unit after the other plugged in, in receive: its plug before it goes in, then the supply's amperes, then its volts. */
export function unitsPart(context: Context): DraftPart {
  const { base, fed } = context;
  const steps = fed.flatMap((unit, k) => stepsOf(context, unit, new Set(fed.slice(k + 1).map((f) => f.unit))));
  const own = ownPowerSteps(context);
  const feedsOthers = ({ at }: DraftStep) =>
    at.some((place) => 'unit' in place && fed.some(({ through }) => through.has(place.unit)));
  return {
    id: 'units',
    title: 'Unit by unit, in receive',
    before: `Power off before each plug goes in (a battery: its lead out), on again to read. ${meterWords} Nobody touches a key. Hook-up: ${base.hookup.name}.${unfedWords(context)}`,
    steps: [
      ...lineStep(context),
      ...own.filter(feedsOthers),
      ...steps,
      ...own.filter((step) => !feedsOthers(step)),
      ...backupSteps(context),
    ],
  };
}

/** All that takes no power is in before anything has some: no transmitter gets any with its line open. */
function lineStep({ station, base, fed }: Context): DraftStep[] {
  const takes = new Set(fed.map(({ unit }) => unit));
  const cables = cablesIn(station, base.hookup).filter(
    (cable) =>
      !takes.has(cable.a.unit) && !takes.has(cable.b.unit) && !['dc', 'earth'].includes(classOf(station, cable)),
  );
  const text = `Plug in what takes no power of its own: ${cables.map(({ number }) => number).join(', ')}.`;
  return fed.length > 0 && cables.length > 0
    ? [doing({ id: 'unit/line', text, at: cables.map(({ id }) => ({ cable: id })) })]
    : [];
}

const stepsOf = (context: Context, fed: FedUnit, waiting: ReadonlySet<string>): DraftStep[] =>
  isOutdoor(context.station, fed.unit) ? outdoorSteps(context, fed, waiting) : indoorSteps(context, fed, waiting);

/** The units that get their power in another hook-up only; what has been read in one before is told in `done`. */
export function otherUnitSteps(context: Context, tried: TriedHookup, done: Set<string>): DraftStep[] {
  const others = fedUnits(context.station, tried).filter(({ unit }) => !done.has(unit));
  for (const { unit } of others) done.add(unit);
  return others.flatMap((fed) => stepsOf({ ...context, base: tried }, fed, new Set()));
}
