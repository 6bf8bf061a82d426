import { unitName } from '../../../rules/look.ts';
import { cablesIn, classOf, kindOf, unitOf } from '../../../station/parts.ts';
import type { Station } from '../../../station/schema/schema.ts';
import type { Context } from '../context.ts';
import { type DraftPart, doing } from '../draft.ts';

/** Cables to what stands outdoors; an earth wire stays where it is. */
export function outdoorCables(station: Station) {
  return station.cables.filter(({ a, b }) => [a, b].some(({ unit }) => isOutdoor(station, unit)));
}

function isOutdoor(station: Station, unit: string): boolean {
  const kind = kindOf(station, unitOf(station, unit));
  return kind.outdoor === true && !kind.electrode;
}

/** What to unplug before a storm, in order: antennas, then all else that leads outdoors, then wires to the house, then the mains. */
export function stormPart({ station, supplies, base }: Context): DraftPart {
  const outdoors = outdoorCables(station);
  const isRf = (c: (typeof outdoors)[number]) => classOf(station, c) === 'rf';
  const mains = station.units.filter((u) => kindOf(station, u).mains);
  const batteries = supplies.filter(({ part }) => part.battery).map(({ part }) => part.origin);
  const houses = cablesIn(station, base.hookup).filter((c) => classOf(station, c) === 'data' && !outdoors.includes(c));
  const numbers = (list: typeof outdoors) => list.map((c) => c.number).join(', ');
  const names = batteries.flatMap((o) => ('unit' in o ? [unitName(station, o.unit)] : []));
  const order: [id: string, text: string, wanted: boolean][] = [
    [
      'antennas',
      `Antennas: unplug ${numbers(outdoors.filter(isRf))} and leave the ends outside, or at the entry.`,
      outdoors.some(isRf),
    ],
    [
      'others',
      `All else that leads outdoors: ${numbers(outdoors.filter((c) => !isRf(c)))}.`,
      outdoors.some((c) => !isRf(c)),
    ],
    ['data', `Leads to the house: network, telephone, ${numbers(houses)}.`, houses.length > 0],
    ['mains', `Mains plugs out of their sockets: ${mains.map((u) => u.name).join(', ')}.`, mains.length > 0],
    ['batteries', `Leads off the batteries: ${names.join(', ')}.`, names.length > 0],
    ['earth', 'Leave the earth wires on, or follow your local code. Partly unplugged is worst.', outdoors.length > 0],
  ];
  const at = (id: string) =>
    id === 'antennas'
      ? outdoors.filter(isRf).map((c) => ({ cable: c.id }))
      : id === 'mains'
        ? mains.map((u) => ({ unit: u.id }))
        : [];
  return {
    id: 'storm',
    title: 'Before a storm',
    before: 'Well before it comes, and whenever you are away. During it touch nothing of the station.',
    steps: order.filter(([, , wanted]) => wanted).map(([id, text]) => doing({ id: `storm/${id}`, text, at: at(id) })),
  };
}
