import { wiringOf } from '../../../catalog/cables/wiring.ts';
import { isOutdoor, portOfRef, suppliesOf, unitName, unitOfPart } from '../../../rules/look.ts';
import type { TriedHookup } from '../../../rules/rule.ts';
import { cablesAt, cablesIn, classOf, kindOf, portName } from '../../../station/parts.ts';
import type { Cable, Unit } from '../../../station/schema/schema.ts';
import { contactName, isForTips, nodeOfRole, reachWords } from '../contacts.ts';
import { type Context, type FedUnit, fedUnits, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, doing, reading } from '../draft.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { circuitOf, type Setup, seenIn } from '../setup.ts';
import { chargeRange } from '../tolerance.ts';
import { dropSteps } from './drops.ts';
import { meterWords } from './meter-words.ts';
import { plugReading } from './plug-reading.ts';

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
    steps: [...lineStep(context), ...own.filter(feedsOthers), ...steps, ...own.filter((step) => !feedsOthers(step))],
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
  const later = others.filter((c) => !batteries.includes(c));
  const numbers = later.map((c) => c.number);
  const with_ = numbers.length > 0 ? `, and ${numbers.join(', ')}` : '';
  if (!isForTips(station, port)) {
    const text = `Plug in ${cable.number}${with_}; ${name} wakes: its lamp, or the program that lists it.`;
    return [doing({ id: `unit/${unit}/in`, text, where: portName(station, port), at: [port] })];
  }
  const [red, black] = [contactName(station, `${unit}.${plus}`), contactName(station, `${unit}.${minus}`)];
  return [
    ...otherPlugs(context, pulled, unit, batteries).map((step) => ({
      ...step,
      text: `${step.text} Then it goes in, before anything else.`,
    })),
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
    ...otherPlugs(context, pulled, unit, later),
    ...noDcSteps(context, pulled, unit, later),
    ...reading({
      id: `unit/${unit}/amps`,
      text: outdoors
        ? `Cover ${unitName(station, from)}, plug in ${cable.number}${with_}, uncover it; ${name} on: amperes out of ${unitName(station, from)} in full light.`
        : `Plug in ${cable.number}${with_}; ${name} on: amperes out of ${unitName(station, from)}.`,
      where: outdoors ? portName(station, port) : unitName(station, from),
      at: [outdoors ? port : { unit: from }],
      taking: { setup, probe: ampsOf(from, supply.part.spec.id) },
      quantity: 'A',
      range: chargeRange(setup, ampsOf(from, supply.part.spec.id)),
      figure: drawFigure(station, setup, { unit, supply: supply.part }, `${name}’s draw in receive`),
    }),
    ...reading({
      id: `unit/${unit}/volts`,
      text: `Volts at ${portName(station, port)}${reachWords(station, port)}.`,
      where: portName(station, port),
      at: [port],
      taking: { setup, probe: voltsAt(`${unit}.${plus}`, `${unit}.${minus}`) },
      quantity: 'V',
      limits,
    }),
    ...outputSteps(context, setup, unit),
    ...dropSteps(context, { part: `unit/${unit}`, setup }, [load]),
  ];
}

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
  const socket = cable[indoors];
  const isIn = !isOutdoor(station, socket.unit);
  const place = isIn ? ` at ${portName(station, socket)}` : '';
  // A core's contact at the unit, and the one that it meets indoors.
  const contact = (ref: string) => {
    const row = wiringOf(station, cable).find((one) => `${cable[fed.end].port}.${one[fed.end]}` === ref);
    return row && `${socket.unit}.${socket.port}.${row[indoors]}`;
  };
  const [live, back] = [contact(plus), contact(minus)];
  const open = setupWithout(context, waiting, { pulled: [{ cable: cable.id, end: indoors }] });
  return [
    ...(isIn && live && back
      ? reading({
          id: `unit/${unit}/volts`,
          text: `Volts that are to go out to ${name}, at ${portName(station, socket)} before ${cable.number} goes in: ${contactName(station, live)} against ${contactName(station, back)}.`,
          where: portName(station, socket),
          at: [{ cable: cable.id, end: indoors }],
          taking: { setup: open, probe: voltsAt(live, back) },
          quantity: 'V',
          limits: { minV, maxV },
        })
      : []),
    ...reading({
      id: `unit/${unit}/amps`,
      text: `Plug in ${cable.number}${place}; ${name} on: amperes out of ${unitName(station, from)}.`,
      where: unitName(station, from),
      at: [{ unit: from }],
      taking: { setup, probe: ampsOf(from, supply.part.spec.id) },
      quantity: 'A',
      range: chargeRange(setup, ampsOf(from, supply.part.spec.id)),
      figure: drawFigure(station, setup, { unit, supply: supply.part }, `${name}’s draw in receive`),
    }),
  ];
}

function leadsToBattery({ base }: Context, { a, b }: Cable): boolean {
  const batteries = suppliesOf(base.trial.circuit).filter(({ part }) => part.sinks);
  return batteries.some(({ part }) => [a.unit, b.unit].includes(unitOfPart(part)));
}

/** What else brings power into a unit, a battery first: each plug read before it goes in. */
function otherPlugs({ station }: Context, setup: Setup, unit: string, others: readonly Cable[]): DraftStep[] {
  return others.flatMap((cable): DraftStep[] => {
    if (classOf(station, cable) !== 'dc') return [];
    const end = cable.a.unit === unit ? 'a' : 'b';
    const text = `Plug of ${cable.number}, before it goes into ${portName(station, cable[end])}`;
    return plugReading(station, setup, { cable, end }).map((step) => ({ ...step, text: `${text}: ${step.text}` }));
  });
}

/** Of a converter: what comes out, before anything is plugged in there. */
function outputSteps(context: Context, setup: Setup, unit: string): DraftStep[] {
  const { station, base } = context;
  const { circuit } = seenIn(setup);
  const outputs = suppliesOf(circuit).filter(({ part }) => part.converter && unitOfPart(part) === unit);
  return outputs.flatMap(({ part: { spec } }): DraftStep[] => {
    const port = { unit, port: portOfRef(spec.plus) };
    const hasBattery = cablesAt(station, base.hookup, unit, port.port).some((cable) => leadsToBattery(context, cable));
    // A charge controller without its battery, and the panel on it, may burn.
    if (!isForTips(station, port) || hasBattery) return [];
    const pulled = cablesAt(station, base.hookup, unit, port.port).map((cable) => ({
      cable: cable.id,
      end: cable.a.unit === unit && cable.a.port === port.port ? ('a' as const) : ('b' as const),
    }));
    const [red, black] = [contactName(station, `${unit}.${spec.plus}`), contactName(station, `${unit}.${spec.minus}`)];
    return reading({
      id: `unit/${unit}/${spec.id}/out`,
      text: `Volts at ${portName(station, port)} with nothing in it: red tip on its ${red}, black on its ${black}.`,
      where: portName(station, port),
      at: [port],
      taking: {
        setup: { ...setup, pulled: [...setup.pulled, ...pulled] },
        probe: voltsAt(`${unit}.${spec.plus}`, `${unit}.${spec.minus}`),
      },
      quantity: 'V',
    });
  });
}

/** On the radio's side of an injector there is no DC: read where something outdoors gets its power through the coax. */
function noDcSteps(context: Context, setup: Setup, unit: string, others: readonly Cable[]): DraftStep[] {
  const { station, fed } = context;
  if (!fed.some((one) => isOutdoor(station, one.unit))) return [];
  return others.flatMap((cable): DraftStep[] => {
    if (classOf(station, cable) !== 'rf') return [];
    const end = cable.a.unit === unit ? 'a' : 'b';
    const out: Setup = { ...setup, pulled: [...setup.pulled, { cable: cable.id, end }] };
    const [live, back] = [nodeOfRole(station, cable[end], 'live'), nodeOfRole(station, cable[end], 'return')];
    const contacts = plugContacts(circuitOf(out), { cable: cable.id, end }, live, back);
    if (!contacts || isOutdoor(station, cable[otherEnd(end)].unit)) return [];
    return reading({
      id: `unit/${unit}/${cable.id}/dc`,
      text: `Plug of ${cable.number}, before it goes into ${portName(station, cable[end])}: ${contactName(station, live)} against ${contactName(station, back)}; the power for outdoors stays on its own side.`,
      where: portName(station, cable[end]),
      at: [{ cable: cable.id, end }],
      taking: { setup: out, probe: voltsAt(...contacts) },
      quantity: 'V',
    });
  });
}
