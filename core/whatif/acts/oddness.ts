import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { fitOf } from '../../catalog/fit.ts';
import { unlikelihood } from '../../catalog/laying/partners.ts';
import { plusContact } from '../../catalog/laying/port-use.ts';
import { findCable, kindOf, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import { remember } from '../../station/remember.ts';
import type { Cable, CableEnd, Station } from '../../station/schema/schema.ts';
import { strayPorts } from './stray-ports.ts';

/** Plus on minus is drawn on purpose only where a unit wants it so. */
const crossedCores = 6;
/** Power in a coax, or RF in a lead that is none. */
const otherLead = 8;
/** For each box between a port and what it is called after. */
const strayBox = 0.7;
/** A port without a cable, where its cable may well be crowded into another one. */
const emptyPort = 6;
/** A box of two ports with a cable at one alone: whatever it is for, it is passed over. */
const passedOver = 10;

/**
 * How odd a drawing is around some cables: by where each leads, whether plus meets plus, and whether ports come to what
 * they are called after. Only differences mean something: less is likelier to be meant.
 */
export function oddness(station: Station, ids: readonly string[]): number {
  const cables = ids.flatMap((id) => findCable(station, id) ?? []);
  const own = cables.reduce(
    (sum, cable) => sum + ofEnds(station, cable) + ofLead(station, cable) + ofCores(station, cable),
    0,
  );
  return own + strayBox * strayPorts(station) - emptyPort * usedPorts(station) + passedOver * passedOverBoxes(station);
}

/** Earth goes from anywhere to anywhere: names at studs say nothing. */
const ofEnds = (station: Station, { a, b }: Cable): number =>
  [a, b].every((ref) => portOf(station, ref).port.class === 'earth') ? 0 : unlikelihood(station, a, b);

function ofLead(station: Station, { kind, a, b }: Cable): number {
  const isCoax = station.cableKinds[kind]?.coax !== undefined;
  const others = [a, b].filter((ref) => {
    const carried = portOf(station, ref).port.class;
    return isCoax ? carried === 'dc' : carried === 'rf';
  });
  return otherLead * others.length;
}

/** How many ports have a cable. */
const usedPorts = remember(
  (station: Station): number =>
    new Set(station.cables.flatMap(({ a, b }) => [`${a.unit}.${a.port}`, `${b.unit}.${b.port}`])).size,
);

/** How many boxes with two ports of power, or of RF, have a cable at one of the two. */
const passedOverBoxes = remember((station: Station): number => {
  const used = new Set(station.cables.flatMap(({ a, b }) => [`${a.unit}.${a.port}`, `${b.unit}.${b.port}`]));
  return station.units.reduce((sum, unit) => {
    const { ports } = kindOf(station, unit);
    const isOver = (['dc', 'rf'] as const).some((carried) => {
      const own = ports.filter((port) => port.class === carried);
      return own.length === 2 && own.filter(({ id }) => used.has(`${unit.id}.${id}`)).length === 1;
    });
    return isOver ? sum + 1 : sum;
  }, 0);
});

function ofCores(station: Station, cable: Cable): number {
  const [a, b] = [plusAt(station, cable, 'a'), plusAt(station, cable, 'b')];
  const row = wiringOf(station, cable).find((r) => r.a === a);
  return a === undefined || b === undefined || !row || row.b === b ? 0 : crossedCores;
}

/** The contact of a cable's plug that touches plus, by what the unit there says of its port, else by its connector. */
function plusAt(station: Station, cable: Cable, end: CableEnd): string | undefined {
  const { unit, port, connector } = portOf(station, cable[end]);
  const plug = plugOf(station, cable, end);
  const plus = plusContact(kindOf(station, unit), port, connector);
  if (!plug || plus === undefined) return undefined;
  return fitOf(station.connectors, plug.id, port.connector).joins.find(([, jack]) => jack === plus)?.[0];
}
