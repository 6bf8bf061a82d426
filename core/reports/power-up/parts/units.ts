import { wiringOf } from '../../../catalog/cables/wiring.ts';
import { isOutdoor, portOfRef, suppliesOf, unitName, unitOfPart } from '../../../rules/look.ts';
import { cablesIn, portName, portOf, unitOf } from '../../../station/parts.ts';
import type { Cable, Station } from '../../../station/schema/schema.ts';
import { nodeOfRole } from '../contacts.ts';
import { type Context, type FedUnit, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, reading } from '../draft.ts';
import { otherEnd, plugContacts } from '../joints.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { circuitOf, type Setup } from '../setup.ts';
import { dropSteps } from './drops.ts';

/** One unit after the other plugged in, in receive: its plug before it goes in, then the supply's amperes, then its volts. */
export function unitsPart(context: Context): DraftPart {
  const { station, base, fed } = context;
  const steps = fed.flatMap((unit, k): DraftStep[] => {
    const waiting = new Set(fed.slice(k + 1).map((f) => f.unit));
    return isOutdoor(station, unit.unit) ? outdoorSteps(context, unit, waiting) : unitSteps(context, unit, waiting);
  });
  const unfed = station.units.filter((u) => needsPower(station, u.id) && !fed.some((f) => f.unit === u.id));
  const alone = unfed.length > 0 ? ` ${unfed.map((u) => u.name).join(', ')}: on its own power, or on none.` : '';
  return {
    id: 'units',
    title: 'Unit by unit, in receive',
    before: `Switch the supply off before each plug goes in, on again to read. Nobody touches a key. Hook-up: ${base.hookup.name}.${alone}`,
    steps,
  };
}

const needsPower = (station: Station, unit: string): boolean =>
  (station.kinds[unitOf(station, unit).kind]?.elements ?? []).some((e) => e.type === 'load');

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
  const { connector } = portOf(station, port);
  const contact = (ref: string) => connector.contacts.find((c) => `${port.port}.${c.id}` === ref)?.name.toLowerCase();
  return [
    ...batteries.flatMap((battery) => batterySteps(context, pulled, unit, battery)),
    ...(contacts
      ? reading({
          id: `unit/${unit}/plug`,
          text: `Plug of ${cable.number}, before it goes in: its ${contact(plus)}, which is to be plus, against its ${contact(minus)}.`,
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
