import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesIn, classOf, portName, portOfRef, unitName } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import { contactName, isForTips, reachWords } from '../contacts.ts';
import { type Context, type FedUnit, setupWithout } from '../context.ts';
import { type DraftStep, doing, reading } from '../draft-step.ts';
import { plugContacts } from '../joints.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { circuitOf, type Setup } from '../setup.ts';
import { chargeRange } from '../tolerance.ts';
import { dropSteps } from './drop-steps.ts';
import { noDcSteps } from './no-dc-steps.ts';
import { leadsToBattery, outputSteps } from './output-steps.ts';
import { plugReading } from './plug-reading.ts';

/** A unit at its turn: each plug that brings it power before it goes in, then the supply's amperes, then its volts. */
export function indoorSteps(
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

/** What else brings power into a unit, a battery first: each plug read before it goes in. */
function otherPlugs({ station }: Context, setup: Setup, unit: string, others: readonly Cable[]): DraftStep[] {
  return others.flatMap((cable): DraftStep[] => {
    if (classOf(station, cable) !== 'dc') return [];
    const end = cable.a.unit === unit ? 'a' : 'b';
    const text = `Plug of ${cable.number}, before it goes into ${portName(station, cable[end])}`;
    return plugReading(station, setup, { cable, end }).map((step) => ({ ...step, text: `${text}: ${step.text}` }));
  });
}
