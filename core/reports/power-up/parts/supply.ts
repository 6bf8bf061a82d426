import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesIn, classOf, kindOf, portName, portOfRef, unitName, unitOf } from '../../../station/parts.ts';
import type { Cable, CableEnd } from '../../../station/schema/schema.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import { type Context, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, doing, reading } from '../draft-step.ts';
import { otherEnd } from '../joints.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { type Setup, seenIn } from '../setup.ts';
import { meterWords } from './meter-words.ts';
import { plugReading } from './plug-reading.ts';
import { switchWords } from './switch-words.ts';

/** Each supply by itself, with nothing on it. */
export function supplyPart(context: Context): DraftPart {
  const { station } = context;
  const setup: Setup = { ...setupWithout(context, new Set(station.units.map((u) => u.id))) };
  const steps = context.supplies.flatMap(({ part }): DraftStep[] => {
    const unit = unitOfPart(part);
    const { id, plus, minus, volts } = part.spec;
    const name = unitName(station, unit);
    const figure = { unit, key: `${id}.volts`, name: `${name}’s voltage`, given: volts, per: 1 };
    return reading({
      id: `supply/${unit}.${id}/volts`,
      text: isOutdoor(station, unit)
        ? `${name} in full light, nothing plugged into it: volts.`
        : `${name}${kindOf(station, unitOf(station, unit)).mains ? ' on' : ''}${settingWords(context, unit)}, nothing on it: volts, red tip on its ${contactName(station, `${unit}.${plus}`)}.`,
      where: portName(station, { unit, port: portOfRef(plus) }),
      at: [{ unit, port: portOfRef(plus) }],
      taking: { setup, probe: voltsAt(`${unit}.${plus}`, `${unit}.${minus}`) },
      quantity: 'V',
      // What a battery has follows from its charge.
      figure: part.battery ? undefined : figure,
    });
  });
  return {
    id: 'supply',
    title: 'Supply alone',
    before:
      'All leads of this station out of the supplies again, and the units’ own switches off; a vehicle’s own leads stay on. Turn the current limit down where there is one.',
    steps,
  };
}

/** How it stands where it can stand otherwise: a vehicle's engine. */
function settingWords({ station, base }: Context, id: string): string {
  const words = switchWords({ ...station, units: station.units.filter((unit) => unit.id === id) }, base.hookup);
  return words.length > 0 ? ` (${words.map((one) => one.replace(/^.*?, /, '')).join(', ')})` : '';
}

/** The strips and switches with no unit on them: volts at every free outlet. */
export function distributionPart(context: Context): DraftPart {
  const { station, base } = context;
  const waiting = new Set(context.fed.map((f) => f.unit));
  const setup = setupWithout(context, waiting);
  const { dc, circuit } = seenIn(setup);
  const supplied = new Set(context.supplies.map(({ part }) => unitOfPart(part)));
  const steps = station.units.flatMap((unit): DraftStep[] => {
    if (waiting.has(unit.id) || supplied.has(unit.id)) return [];
    return (station.kinds[unit.kind]?.ports ?? []).flatMap((port): DraftStep[] => {
      const isTaken = setup.station.cables.some(({ a, b }) =>
        [a, b].some((end) => end.unit === unit.id && end.port === port.id),
      );
      if (port.class !== 'dc' || isTaken) return [];
      const ref = { unit: unit.id, port: port.id };
      const [live, back] = [nodeOfRole(station, ref, 'live'), nodeOfRole(station, ref, 'return')];
      const [a, b] = [circuit.nodeOf.get(live), circuit.nodeOf.get(back)];
      if (a === undefined || b === undefined || !dc?.between(a, b)) return [];
      return reading({
        id: `outlet/${unit.id}.${port.id}`,
        text: `Volts at ${portName(station, ref)}: red tip on its ${contactName(station, live)}, black on its ${contactName(station, back)}.`,
        where: portName(station, ref),
        at: [ref],
        taking: { setup, probe: voltsAt(live, back) },
        quantity: 'V',
      });
    });
  });
  const idle = context.supplies.flatMap(({ part }) => idleAmps(context, setup, part));
  return {
    id: 'distribution',
    title: 'Distribution with nothing plugged in',
    before: `No unit on it yet. ${meterWords} Hook-up: ${base.hookup.name}.`,
    steps: [...inSteps(context, setup), ...steps, ...(steps.length > 0 ? idle : [])],
  };
}

/** What leads between supplies, strips and units that take no power, each plug read before it goes in. */
function inSteps(context: Context, setup: Setup): DraftStep[] {
  const { station, base } = context;
  const cables = cablesIn(setup.station, base.hookup).filter((cable) => classOf(station, cable) === 'dc');
  return nearestFirst(context, cables).flatMap(({ cable, end }): DraftStep[] => {
    const place = portName(station, cable[end]);
    const read = plugReading(station, setup, { cable, end });
    const text = `Power off, plug in ${cable.number} at ${portName(station, cable[otherEnd(end)])}, power on. Plug at its other end, before it goes into ${place}`;
    if (read.length === 0)
      return [
        doing({
          id: `outlet/${cable.id}/in`,
          text: `Power off, plug in ${cable.number} (to ${place}), power on.`,
          at: [{ cable: cable.id }],
        }),
      ];
    return read.map((step) => ({ ...step, text: `${text}: ${step.text} Then it goes in, with power off.` }));
  });
}

/** Leads in the order of the current, each with the end that it leaves by. */
function nearestFirst({ supplies }: Context, cables: readonly Cable[]): { cable: Cable; end: CableEnd }[] {
  const reached = new Set(supplies.map(({ part }) => unitOfPart(part)));
  const waiting = new Set(cables);
  const order: { cable: Cable; end: CableEnd }[] = [];
  for (let found = true; found; ) {
    found = false;
    for (const cable of waiting) {
      const from = (['a', 'b'] as const).find((end) => reached.has(cable[end].unit));
      if (!from) continue;
      waiting.delete(cable);
      const end = otherEnd(from);
      reached.add(cable[end].unit);
      order.push({ cable, end });
      found = true;
    }
  }
  // What no supply reaches goes in all the same.
  return [...order, ...[...waiting].map((cable) => ({ cable, end: 'b' as const }))];
}

/** Of what has a meter of its own: a beginner has only one across the poles of a battery, and a panel is outdoors. */
function idleAmps({ station }: Context, setup: Setup, part: Context['supplies'][number]['part']): DraftStep[] {
  const unit = unitOfPart(part);
  if (!kindOf(station, unitOf(station, unit)).mains) return [];
  const port = portOfRef(part.spec.plus);
  return reading({
    id: `outlet/${unit}.${part.spec.id}/amps`,
    text: `Amperes out of ${unitName(station, unit)} with no unit on it, by its own meter.`,
    where: portName(station, { unit, port }),
    at: [{ unit, port }],
    taking: { setup, probe: ampsOf(unit, part.spec.id) },
    quantity: 'A',
  });
}
