import { formatDbm, formatWatts } from '../../../quantity/format.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { findCable } from '../../../station/parts.ts';
import type { Place } from '../../../station/place.ts';
import type { Station } from '../../../station/schema/schema.ts';
import type { PowerUpDraft } from '../draft-power-up.ts';
import type { DraftStep, Taking } from '../draft-step.ts';
import { formatQuantity } from '../format-quantity.ts';
import { isOff } from '../judge-reading.ts';
import { figureOfReading } from '../own-figures.ts';
import type { Seen, Setup } from '../setup.ts';
import { type Expected, openOhms } from '../sheet.ts';
import { jointThatGives } from './joint-that-gives.ts';
import { distance, isAbout } from './nearness.ts';
import type { Suspect, Tried } from './suspect.ts';
import { suspectsIn } from './suspects-in.ts';

/** What would make a reading what it is. */
export interface Cause {
  readonly text: string;
  readonly at: Place;
  /** False where it only points the same way. */
  readonly fits: boolean;
}

/** A step and what was read there. */
export interface StepReading {
  readonly step: string;
  readonly value: number;
}

const mostTold = 3;
/** Right readings that are asked whether a suspect would have shown there: the nearest, and those at its own place. */
const mostAsked = 12;

/**
 * What would give a reading of a draft's step that is off, likeliest first: each single failure, swapped or shorted lead, bad joint, held
 * control, plug in another jack is put into the station as it stood at that step. What would have shown at a step whose reading was right
 * comes after what would not. Empty where nothing single gives it, or the reading is right.
 */
export function causesOf(
  { station, parts }: PowerUpDraft,
  { step: id, value }: StepReading,
  others: readonly StepReading[] = [],
): Cause[] {
  const steps = parts.flatMap((part) => part.steps);
  const step = steps.find((s) => s.id === id);
  if (!step?.taking || !step.expected || !isOff(step.expected, value)) return [];
  const { taking, expected } = step;
  const tried = suspectsIn(taking.setup, step.at).flatMap((suspect) => showsIn(taking, suspect, expected));
  const joints = tried.flatMap((one) => jointThatGives(taking, expected, value, one));
  const fitting = [...tried.filter(({ shows }) => isAbout(expected, shows, value)), ...joints];
  const right = rightAround(steps, step, others);
  const ranked = fitting
    .map(({ suspect, shows }) => ({
      suspect,
      order: [
        contradictions(suspect, right),
        isFarOff(station, suspect) ? 1 : 0,
        suspect.rank + away(station, step, suspect),
        distance(expected, shows, value),
      ],
    }))
    .sort((a, b) => compare(a.order, b.order))
    .map(({ suspect }) => toCause(suspect, true));
  const told = [...ranked.slice(0, mostTold - 1), ...figureCause(step, value), ...ranked.slice(mostTold - 1)];
  return (told.length > 0 ? told : sameWay(expected, value, tried)).slice(0, mostTold);
}

const toCause = ({ text, at }: Suspect, fits: boolean): Cause => ({ text, at, fits });

/** A suspect with what it would show, where that is not right either. */
function showsIn({ setup, probe }: Taking, suspect: Suspect, expected: Expected): Tried[] {
  const seen = suspect.see(setup);
  const shows = seen && (probe(seen) ?? openOhms);
  return shows === null || !isOff(expected, shows) ? [] : [{ suspect, shows }];
}

/** What is further off has to be so much likelier by itself. */
const elsewhere = 2;

/** Less is nearer: the unit or lead of the step itself, or a lead that goes into it. */
function away(station: Station, { at }: DraftStep, suspect: Suspect): number {
  const units = at.flatMap((place) => ('unit' in place ? [place.unit] : []));
  const cables = at.flatMap((place) => ('cable' in place ? [place.cable] : []));
  if ('unit' in suspect.at) return units.includes(suspect.at.unit) ? 0 : elsewhere;
  const cable = findCable(station, suspect.at.cable);
  const isHere =
    cables.includes(suspect.at.cable) || [cable?.a.unit, cable?.b.unit].some((u) => u && units.includes(u));
  return isHere ? 0 : elsewhere;
}

/** Nobody climbs before all that can be looked at from the desk has been looked at. */
function isFarOff(station: Station, { at }: Suspect): boolean {
  const cable = 'cable' in at ? findCable(station, at.cable) : undefined;
  const units = 'unit' in at ? [at.unit] : cable ? [cable.a.unit, cable.b.unit] : [];
  return units.some((unit) => isOutdoor(station, unit));
}

const compare = (a: readonly number[], b: readonly number[]): number => {
  const i = a.findIndex((v, k) => v !== b[k]);
  return i < 0 ? 0 : (a[i] as number) - (b[i] as number);
};

/** All other steps whose readings were right, the next to this one first. */
function rightAround(steps: readonly DraftStep[], step: DraftStep, others: readonly StepReading[]): Taken[] {
  const here = steps.indexOf(step);
  return steps
    .flatMap(({ id, taking, expected, at }, i) => {
      const read = others.find((r) => r.step === id);
      const isRight = read && taking && expected && !isOff(expected, read.value);
      return isRight && i !== here ? [{ taking, expected, at, far: Math.abs(i - here) }] : [];
    })
    .sort((a, b) => a.far - b.far);
}

interface Taken {
  readonly taking: Taking;
  readonly expected: Expected;
  readonly at: readonly Place[];
}

/** At how many steps with a right reading it would have shown. */
function contradictions(suspect: Suspect, right: readonly Taken[]): number {
  const isThere = ({ at }: Taken) => at.some((place) => isSameThing(place, suspect.at));
  const asked = [...right.slice(0, mostAsked), ...right.slice(mostAsked).filter(isThere).slice(0, mostAsked)];
  // Several readings are taken in one setup.
  const seenOnce = new Map<Setup, Seen | null>();
  return asked.filter(({ taking: { setup, probe }, expected }) => {
    const seen = seenOnce.has(setup) ? (seenOnce.get(setup) ?? null) : suspect.see(setup);
    seenOnce.set(setup, seen);
    return seen !== null && isOff(expected, probe(seen) ?? openOhms);
  }).length;
}

const isSameThing = (one: Place, other: Place): boolean =>
  'cable' in one ? 'cable' in other && one.cable === other.cable : 'unit' in other && one.unit === other.unit;

/** The unit may simply draw, or make, other than its figure says. */
function figureCause(step: DraftStep, value: number): Cause[] {
  const own = figureOfReading(step, value);
  const { figure, expected } = step;
  if (own === null || !figure || !expected) return [];
  const unlike =
    figure.per === 'dBm' ? Math.abs(own - figure.given) > 6 : own / figure.given > 3 || own / figure.given < 1 / 3;
  if (unlike) return [];
  const say = (amount: number) =>
    figure.per === 'dBm'
      ? formatDbm(amount)
      : figure.per === 1
        ? formatQuantity(amount, expected.quantity)
        : formatWatts(amount);
  const text = `${figure.name} is ${say(own)}, not ${say(figure.given)} as its figure says`;
  return [{ text, at: { unit: figure.unit }, fits: true }];
}

/** Nothing gives this very reading: what at least goes the same way, by far the nearest first. */
function sameWay(expected: Expected, read: number, tried: readonly Tried[]): Cause[] {
  const side = (v: number) => (expected.to !== null && v > expected.to ? 1 : -1);
  return tried
    .filter(({ shows }) => side(shows) === side(read))
    .sort(
      (a, b) =>
        a.suspect.rank - b.suspect.rank || distance(expected, a.shows, read) - distance(expected, b.shows, read),
    )
    .map(({ suspect }) => toCause(suspect, false));
}
