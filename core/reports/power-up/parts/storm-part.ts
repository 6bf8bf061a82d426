import { isOutdoor } from '../../../station/outdoors.ts';
import { classOf, kindOf, portName, unitName } from '../../../station/parts.ts';
import { suppliesOf, unitOfPart } from '../../../trial/parts.ts';
import { type ComingIn, isLive } from '../coming-in.ts';
import type { Context } from '../context.ts';
import { type DraftPart, doing } from '../draft-step.ts';

/**
 * What to unplug before a storm and whenever nobody is home, whatever the hook-up: all that comes in from outdoors, with
 * what to do with each loose end, then what comes from the house. Common practice; local codes decide on earthing.
 */
export function stormPart(context: Context): DraftPart {
  const { station, facts } = context;
  const { comers } = context;
  const coax = comers.filter((one) => one.class === 'rf');
  const others = comers.filter((one) => one.class !== 'rf');
  const [live, lines] = [others.filter(isLive), others.filter((one) => !isLive(one))];
  const mains = station.units.filter((u) => kindOf(station, u).mains);
  const networked = station.units.filter((u) =>
    kindOf(station, u).elements.some((e) => e.type === 'dataEnd' && e.standard === 'ethernet'),
  );
  const batteries = new Set(
    facts.hookups.flatMap(({ trial }) =>
      suppliesOf(trial.circuit).flatMap(({ part }) => (part.battery ? unitOfPart(part) : [])),
    ),
  );
  const inside = [...batteries].filter((unit) => !isOutdoor(station, unit));
  const hasEarth = station.cables.some((cable) => classOf(station, cable) === 'earth');
  const places = (list: readonly ComingIn[]) => list.map((one) => placeOf(context, one)).join(', ');
  const names = (units: readonly { readonly name: string }[]) => units.map((u) => u.name).join(', ');
  const cables = (list: readonly ComingIn[]) => list.map(({ cable }) => ({ cable: cable.id }));
  const order: [id: string, text: string, wanted: boolean, at?: ReturnType<typeof cables> | { unit: string }[]][] = [
    [
      'antennas',
      `Antennas: unplug ${places(coax)}. The loose ends go outside, or into an earthed socket where they enter; none stays lying in the station.`,
      coax.length > 0,
      cables(coax),
    ],
    [
      'others',
      `Then what else comes in: unplug ${places(lines)}, switched off first. Their loose ends go outside too.`,
      lines.length > 0,
      cables(lines),
    ],
    [
      'live',
      `Then what comes in with volts on it: unplug ${places(live)}, and cap each loose plug at once: nothing may touch its contacts together.`,
      live.length > 0,
      cables(live),
    ],
    [
      'data',
      `The network lead that comes from the house, at ${names(networked)}, and a telephone’s if there is one.`,
      networked.length > 0,
    ],
    [
      'mains',
      `Mains plugs out of their sockets: ${names(mains)}.`,
      mains.length > 0,
      mains.map((u) => ({ unit: u.id })),
    ],
    [
      'batteries',
      `This station’s leads off the batteries, last: ${inside.map((u) => unitName(station, u)).join(', ')}.`,
      inside.length > 0,
    ],
    [
      'earth',
      `${hasEarth ? 'Leave the earth wires on, or follow your local code. ' : ''}Partly unplugged is worst.`,
      comers.length > 0,
    ],
  ];
  return {
    id: 'storm',
    title: 'Before a storm',
    before:
      'Well before it comes, and whenever nobody is home: then nothing of this stays plugged in. During it touch nothing of the station.',
    steps: order
      .filter(([, , wanted]) => wanted)
      .map(([id, text, , at = []]) => doing({ id: `storm/${id}`, text, at })),
  };
}

/** `R8 at Arrestor · antenna (in On the air)`. */
function placeOf({ station }: Context, { cable, end, only }: ComingIn): string {
  const where = `${cable.number} at ${portName(station, cable[end])}`;
  return only.length > 0 ? `${where} (in ${only.map(({ name }) => name).join(', ')})` : where;
}
