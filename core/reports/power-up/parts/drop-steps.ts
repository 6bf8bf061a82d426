import type { DiodePart, LoadPart, Resistor } from '../../../circuit/circuit.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { classOf, findCable, portName, unitName } from '../../../station/parts.ts';
import type { Place } from '../../../station/place.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { passersOf } from '../../../trial/metal/conductors.ts';
import { leastWay } from '../../../trial/metal/least-way.ts';
import type { Numbered } from '../../../trial/parts.ts';
import { mainFeederOf } from '../../../trial/power/feeders.ts';
import { type Reachable, reachable } from '../contacts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { voltsAt } from '../probes.ts';
import { type Seen, type Setup, seenIn } from '../setup.ts';
import { rangeOf } from '../tolerance.ts';

/** From here on a bad contact heats its plug, long before anything stops working. Common practice. */
export const fromAmps = 5;

/** Less than this, in amperes, makes no difference to a lead that carries so much. */
const leastLoad = 0.1;

/** A hand meter shows hundredths of a volt. */
const leastVolts = 0.02;

/**
 * The drops along both sides of the way from the supply to each load, for every lead and box on it that carries more than a
 * few amperes: an ohmmeter takes a joint of 50 milliohm for a sound one, and at 20 A it makes a volt and 20 W. `when` says
 * what is held meanwhile.
 */
export function dropSteps(
  { station }: Context,
  { part, setup, when = '' }: { readonly part: string; readonly setup: Setup; readonly when?: string },
  loads: readonly Numbered<LoadPart>[],
): DraftStep[] {
  const seen = seenIn(setup);
  const told = new Set<string>();
  return loads.flatMap(({ part: load, index }): DraftStep[] => {
    const { circuit, reach } = seen;
    if (!reach || Math.abs(reach.dc.ampsIn(index)) < leastLoad) return [];
    const supply = mainFeederOf(circuit, reach, load.plus)?.part;
    if (!supply) return [];
    const hops = [
      ...hopsOf(station, seen, 'plus', supply.plus, load.plus),
      ...hopsOf(station, seen, 'minus', load.minus, supply.minus),
    ];
    return hops.flatMap(({ side, name, at, from, to, high, low, parts }): DraftStep[] => {
      const amps = Math.max(...parts.map((i) => Math.abs(reach.dc.ampsIn(i))));
      if (amps < fromAmps || told.has(high + low)) return [];
      told.add(high + low);
      const probe = voltsAt(high, low);
      return reading({
        id: `${part}/drop/${high}/${low}`,
        text: `Drop on the ${side} side of ${name}${when}: red tip on ${tipWords(station, from)}, black on ${tipWords(station, to)}. More is a bad joint in there, and heat.`,
        where: `${portName(station, from.port)} to ${portName(station, to.port)}`,
        at: [at],
        taking: { setup, probe },
        quantity: 'V',
        range: () => ({ from: 0, to: Math.max(leastVolts, rangeOf(setup, probe, 'V').to) }),
      });
    });
  });
}

const tipWords = (station: Station, { port, name }: Reachable) => `${name} of ${portName(station, port)}`;

/** A lead or a box on the way of the current, from one contact that a tip can reach to another. */
interface PlugToPlug {
  readonly side: 'plus' | 'minus';
  readonly name: string;
  readonly at: Place;
  readonly from: Reachable;
  readonly to: Reachable;
  /** Their nodes. */
  readonly high: string;
  readonly low: string;
  /** The parts in between. */
  readonly parts: readonly number[];
}

/** What belongs to one lead or box on the way, by its nodes and parts. */
interface Stretch {
  readonly owner: string;
  readonly place: Place;
  readonly from: number;
  readonly to: number;
  readonly isFused: boolean;
  readonly parts: readonly number[];
}

/** The hops between two nodes in the direction of the current; none where the way does not keep to power leads. */
function hopsOf(
  station: Station,
  { circuit, on }: Seen,
  side: PlugToPlug['side'],
  start: number,
  end: number,
): PlugToPlug[] {
  const way = leastWay(circuit, passersOf(circuit, on), start, end);
  const stretches: Stretch[] = [];
  let node = start;
  for (const index of way?.parts ?? []) {
    const part = circuit.parts[index] as Resistor | DiodePart;
    const { origin } = part;
    const [one, other] = part.kind === 'diode' ? [part.anode, part.cathode] : [part.a, part.b];
    const to = one === node ? other : one;
    const place: Place = 'cable' in origin ? { cable: origin.cable } : { unit: origin.unit };
    const owner = 'cable' in origin ? `cable ${origin.cable}` : origin.unit;
    const last = stretches.at(-1);
    const isFused = part.kind === 'resistor' && part.fuse !== undefined;
    if (last?.owner === owner)
      stretches[stretches.length - 1] = {
        ...last,
        to,
        isFused: last.isFused || isFused,
        parts: [...last.parts, index],
      };
    else stretches.push({ owner, place, from: node, to, isFused, parts: [index] });
    node = to;
  }
  const keepsToPower = stretches.every(({ place }) => {
    const cable = 'cable' in place ? findCable(station, place.cable) : undefined;
    return !cable || classOf(station, cable) === 'dc';
  });
  if (!keepsToPower) return [];
  return stretches.flatMap(({ place, from, to, isFused, parts }): PlugToPlug[] => {
    const [high = '', low = ''] = [circuit.nodes[from], circuit.nodes[to]];
    const [one, other] = [reachable(station).get(high), reachable(station).get(low)];
    // A joint inside a box can't be reached with its lid on, and nobody reads anything outdoors.
    if (!one || !other || [one, other].some(({ port }) => isOutdoor(station, port.unit))) return [];
    const fuse = isFused ? ', its fuse and the holder' : '';
    const name =
      'cable' in place
        ? `${findCable(station, place.cable)?.number} with its plugs${fuse}`
        : `${unitName(station, place.unit)}${fuse}`;
    return [{ side, name, at: place, from: one, to: other, high, low, parts }];
  });
}
