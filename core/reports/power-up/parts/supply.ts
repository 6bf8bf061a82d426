import { isOutdoor, portOfRef, unitName, unitOfPart } from '../../../rules/look.ts';
import { cablesIn, classOf, portName } from '../../../station/parts.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import { type Context, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, doing, reading } from '../draft.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { type Setup, seenIn } from '../setup.ts';

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
        : `${name}${part.battery ? '' : ' on'}, nothing on it: volts, red tip on its ${contactName(station, `${unit}.${plus}`)}.`,
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
    before: 'Everything unplugged from the supply. Turn its current limit down where it has one.',
    steps,
  };
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
  const idle = steps.length === 0 ? [] : context.supplies.flatMap(({ part }) => idleAmps(context, setup, part));
  return {
    id: 'distribution',
    title: 'Distribution with nothing plugged in',
    before: `No unit on it yet. Hook-up: ${base.hookup.name}.`,
    steps: steps.length > 0 ? [...inSteps(context, setup), ...steps, ...idle] : [],
  };
}

/** What leads between supplies, strips and units that take no power, which is in from here on. */
function inSteps({ station, base }: Context, setup: Setup): DraftStep[] {
  const cables = cablesIn(setup.station, base.hookup).filter((cable) => classOf(station, cable) === 'dc');
  const words = cables.map((c) => `${c.number} (${portName(station, c.a)} to ${portName(station, c.b)})`).join(', ');
  const at = cables.map(({ id }) => ({ cable: id }));
  return cables.length > 0 ? [doing({ id: 'outlet/in', text: `Power off, plug in ${words}, power on.`, at })] : [];
}

function idleAmps({ station }: Context, setup: Setup, part: Context['supplies'][number]['part']): DraftStep[] {
  const unit = unitOfPart(part);
  const port = portOfRef(part.spec.plus);
  return reading({
    id: `outlet/${unit}.${part.spec.id}/amps`,
    text: `Amperes out of ${unitName(station, unit)} with no unit on it.`,
    where: portName(station, { unit, port }),
    at: [{ unit, port }],
    taking: { setup, probe: ampsOf(unit, part.spec.id) },
    quantity: 'A',
  });
}
