import { cablesAt, kindOf } from '../../../station/parts.ts';
import type { Unit } from '../../../station/schema/schema.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, doing } from '../draft-step.ts';

/** Units on the mains, or with a cell inside, that are plugged in and get nothing from a supply of the station. */
export function ownPowerSteps(context: Context): DraftStep[] {
  return unfedIn(context).flatMap((unit): DraftStep[] => {
    const kind = kindOf(context.station, unit);
    const inside = kind.elements.some((e) => e.type === 'supply' || e.type === 'battery');
    if (!kind.mains && !inside) return [];
    const hasValves = kind.elements.some((e) => e.type === 'rfPath' && e.plate);
    const first = hasValves ? 'covers shut, the line to its load in, on standby; ' : '';
    const text = kind.mains
      ? `${unit.name}: ${first}its mains plug in, switch it on. Off again at once at a loud buzz, a crackle, smoke or a smell.`
      : `${unit.name}: its own battery in, switch it on.`;
    return [doing({ id: `unit/${unit.id}/own`, text, at: [{ unit: unit.id }] })];
  });
}

/** What works with power, has a lead in it, and is not fed through a plug; a supply is on already. */
function unfedIn({ station, base, fed, supplies }: Context): Unit[] {
  const done = new Set([...fed.map((f) => f.unit), ...supplies.map(({ part }) => unitOfPart(part))]);
  return station.units.filter((unit) => {
    const { elements, mains } = kindOf(station, unit);
    const needsPower = mains === true || elements.some((e) => e.type === 'load');
    return needsPower && !done.has(unit.id) && cablesAt(station, base.hookup, unit.id).length > 0;
  });
}

/** What as drawn gets no power at all, as a sentence. */
export function unfedWords(context: Context): string {
  const told = new Set(ownPowerSteps(context).flatMap(({ at }) => at.map((place) => 'unit' in place && place.unit)));
  const names = unfedIn(context).flatMap(({ id, name }) => (told.has(id) ? [] : [name]));
  return names.length > 0 ? ` As drawn nothing feeds ${names.join(', ')}.` : '';
}
