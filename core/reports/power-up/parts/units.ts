import { wiringOf } from '../../../catalog/cables/wiring.ts';
import { isOutdoor, portOfRef, suppliesOf, unitName, unitOfPart } from '../../../rules/look.ts';
import type { TriedHookup } from '../../../rules/rule.ts';
import { cablesAt, cablesIn, kindOf, portName } from '../../../station/parts.ts';
import type { Cable, Unit } from '../../../station/schema/schema.ts';
import { contactName, isForTips, nodeOfRole } from '../contacts.ts';
import { type Context, type FedUnit, fedUnits, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, doing, reading } from '../draft.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { circuitOf, type Setup } from '../setup.ts';
import { dropSteps } from './drops.ts';

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
    before: `Power off before each plug goes in (a battery: its lead out), on again to read. Amperes on the supply’s own meter or a clamp meter; a hand meter in the lead only below its fuse’s rating. Nobody touches a key. Hook-up: ${base.hookup.name}.${unfedWords(context)}`,
    steps: [...own.filter(feedsOthers), ...steps, ...own.filter((step) => !feedsOthers(step))],
  };
}

const stepsOf = (context: Context, fed: FedUnit, waiting: ReadonlySet<string>): DraftStep[] =>
  isOutdoor(context.station, fed.unit) ? outdoorSteps(context, fed, waiting) : unitSteps(context, fed, waiting);

/** The units that get their power in another hook-up only; what has been read in one before is told in `done`. */
export function otherUnitSteps(context: Context, tried: TriedHookup, done: Set<string>): DraftStep[] {
  const others = fedUnits(context.station, tried).filter(({ unit }) => !done.has(unit));
  for (const { unit } of others) done.add(unit);
  return others.flatMap((fed) => stepsOf({ ...context, base: tried }, fed, new Set()));
}

/** Units on the mains, or with a cell inside, that are plugged in and get nothing from a supply of the station. */
function ownPowerSteps(context: Context): DraftStep[] {
  return unfedIn(context).flatMap((unit): DraftStep[] => {
    const kind = kindOf(context.station, unit);
    const inside = kind.elements.some((e) => e.type === 'supply' || e.type === 'battery');
    if (!kind.mains && !inside) return [];
    const text = kind.mains
      ? `${unit.name}: its mains plug in, switch it on. Off again at once at a hum, a crackle or a smell.`
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

function unfedWords(context: Context): string {
  const told = new Set(ownPowerSteps(context).flatMap(({ at }) => at.map((place) => 'unit' in place && place.unit)));
  const names = unfedIn(context).flatMap(({ id, name }) => (told.has(id) ? [] : [name]));
  return names.length > 0 ? ` As drawn nothing feeds ${names.join(', ')}.` : '';
}

function unitSteps(
  context: Context,
  { unit, load, cable, end, supply }: FedUnit,
  waiting: ReadonlySet<string>,
): DraftStep[] {
  const { station } = context;
  const { plus, minus, minV, maxV } = load.part.spec;
  const [name, limits] = [unitName(station, unit), { minV, maxV }];
  const port = { unit, port: portOfRef(plus) };
  const plug = { cable: cable.id, end };
  const pulled = setupWithout(context, waiting, { pulled: [plug] });
  const setup = setupWithout(context, waiting);
  const contacts = plugContacts(circuitOf(pulled), plug, `${unit}.${plus}`, `${unit}.${minus}`);
  const from = unitOfPart(supply.part);
  const outdoors = isOutdoor(station, from);
  const others = othersAt(context, unit, cable, waiting);
  // A charge controller takes its battery's voltage as its measure: the panel comes after it.
  const batteries = outdoors ? others.filter((c) => leadsToBattery(context, c)) : [];
  const numbers = others.filter((c) => !batteries.includes(c)).map((c) => c.number);
  const with_ = numbers.length > 0 ? `, and ${numbers.join(', ')}` : '';
  if (!isForTips(station, port)) {
    const text = `Plug in ${cable.number}${with_}; ${name} wakes: its lamp, or the program that lists it.`;
    return [doing({ id: `unit/${unit}/in`, text, where: portName(station, port), at: [port] })];
  }
  const [red, black] = [contactName(station, `${unit}.${plus}`), contactName(station, `${unit}.${minus}`)];
  return [
    ...batteries.flatMap((battery) => batterySteps(context, pulled, unit, battery)),
    ...(contacts
      ? reading({
          id: `unit/${unit}/plug`,
          text: `Plug of ${cable.number}, before it goes into ${name}: red tip on its ${red}, black on its ${black}. A minus sign means swapped.`,
          where: `${cable.number} at ${portName(station, port)}`,
          at: [plug],
          taking: { setup: pulled, probe: voltsAt(...contacts) },
          quantity: 'V',
          limits,
        })
      : []),
    ...reading({
      id: `unit/${unit}/amps`,
      text: outdoors
        ? `Cover ${unitName(station, from)}, plug in ${cable.number}${with_}, uncover it; ${name} on: amperes out of ${unitName(station, from)} in full light.`
        : `Plug in ${cable.number}${with_}; ${name} on: amperes out of ${unitName(station, from)}.`,
      where: outdoors ? portName(station, port) : unitName(station, from),
      at: [outdoors ? port : { unit: from }],
      taking: { setup, probe: ampsOf(from, supply.part.spec.id) },
      quantity: 'A',
      figure: drawFigure(station, setup, { unit, supply: supply.part }, `${name}’s draw in receive`),
    }),
    ...reading({
      id: `unit/${unit}/volts`,
      text: `Volts at the terminals of ${name}.`,
      where: portName(station, port),
      at: [port],
      taking: { setup, probe: voltsAt(`${unit}.${plus}`, `${unit}.${minus}`) },
      quantity: 'V',
      limits,
    }),
    ...dropSteps(context, { part: `unit/${unit}`, setup }, [load]),
  ];
}

/** The cables that have been plugged in when all units have power. */
export const pluggedIn = (context: Context): ReadonlySet<Cable> =>
  new Set(
    context.fed.flatMap(({ unit, cable }, k) => {
      const waiting = new Set(context.fed.slice(k + 1).map((f) => f.unit));
      return [cable, ...othersAt(context, unit, cable, waiting)];
    }),
  );

/** The unit's other cables that go in with it: those to units that are in already. */
const othersAt = ({ station, base }: Context, unit: string, feed: Cable, waiting: ReadonlySet<string>): Cable[] =>
  cablesIn(station, base.hookup).filter(
    (c) => c.id !== feed.id && [c.a, c.b].some((e) => e.unit === unit) && [c.a, c.b].every((e) => !waiting.has(e.unit)),
  );

/** A unit outdoors is read indoors, where its lead comes in; out there everything stays plugged in. */
function outdoorSteps(context: Context, fed: FedUnit, waiting: ReadonlySet<string>): DraftStep[] {
  const { station } = context;
  const { unit, load, cable, supply } = fed;
  const indoors = otherEnd(fed.end);
  const { plus, minus, minV, maxV } = load.part.spec;
  const [name, setup, from] = [unitName(station, unit), setupWithout(context, waiting), unitOfPart(supply.part)];
  const isIn = !isOutdoor(station, cable[indoors].unit);
  const place = isIn ? ` at ${portName(station, cable[indoors])}` : '';
  // A core's contact at the unit, and the one that it has indoors.
  const contact = (ref: string) => {
    const row = wiringOf(station, cable).find((one) => `${cable[fed.end].port}.${one[fed.end]}` === ref);
    return row && `cable ${cable.id}.${indoors}.${row[indoors]}`;
  };
  const [live, back] = [contact(plus), contact(minus)];
  return [
    ...reading({
      id: `unit/${unit}/amps`,
      text: `Plug in ${cable.number}${place}; ${name} on: amperes out of ${unitName(station, from)}.`,
      where: unitName(station, from),
      at: [{ unit: from }],
      taking: { setup, probe: ampsOf(from, supply.part.spec.id) },
      quantity: 'A',
      figure: drawFigure(station, setup, { unit, supply: supply.part }, `${name}’s draw in receive`),
    }),
    ...(isIn && live && back
      ? reading({
          id: `unit/${unit}/volts`,
          text: `Volts that go out to ${name} on ${cable.number}, read indoors.`,
          where: portName(station, cable[indoors]),
          at: [{ cable: cable.id, end: indoors }],
          taking: { setup, probe: voltsAt(live, back) },
          quantity: 'V',
          limits: { minV, maxV },
        })
      : []),
  ];
}

function leadsToBattery({ base }: Context, { a, b }: Cable): boolean {
  const batteries = suppliesOf(base.trial.circuit).filter(({ part }) => part.battery);
  return batteries.some(({ part }) => [a.unit, b.unit].includes(unitOfPart(part)));
}

/** The battery at a unit that something else feeds too: plugged in before that, and read. */
function batterySteps({ station }: Context, setup: Setup, unit: string, battery: Cable): DraftStep[] {
  const port = battery.a.unit === unit ? battery.a : battery.b;
  return reading({
    id: `unit/${unit}/${battery.id}/volts`,
    text: `Plug in ${battery.number}, the battery’s, before anything else: volts where it goes in.`,
    where: portName(station, port),
    at: [{ unit, port: port.port }],
    taking: { setup, probe: voltsAt(nodeOfRole(station, port, 'live'), nodeOfRole(station, port, 'return')) },
    quantity: 'V',
  });
}
