import { layCable } from '../catalog/laying/lay-cable.ts';
import { placeUnit } from '../catalog/laying/place-unit.ts';
import { type Change, edit } from '../station/edit.ts';
import { firstFree } from '../station/first-free.ts';
import type { Fix } from '../station/fix.ts';
import { cablesAt, findUnit, hookupsOf, kindOf, portOfRef } from '../station/parts.ts';
import type { Cable, Hookup, PortRef, Station } from '../station/schema/schema.ts';
import type { UnitElement } from '../station/schema/unit-kind.ts';

/** A mute cable from a free contact that closes with a changeover to a receiver's mute jack. */
export function muteCable(station: Station, mute: PortRef): Fix | undefined {
  const [hookup] = hookupsOf(station);
  if (!hookup) return undefined;
  for (const unit of station.units) {
    const kind = kindOf(station, unit);
    const over = new Set((kind.actors ?? []).filter((a) => a.does === 'changesOver').map((a) => a.id));
    const contact = kind.elements.find((e) => isContactOf(e, over));
    if (contact?.type !== 'contactPair') continue;
    const port = portOfRef(contact.from);
    if (cablesAt(station, hookup, unit.id, port).length > 0) continue;
    return { name: 'Lay the mute cable', change: layCable(station, { unit: unit.id, port }, mute) };
  }
  return undefined;
}

const isContactOf = (element: UnitElement, over: ReadonlySet<string>): boolean =>
  element.type === 'contactPair' && (element.when?.on ?? []).some((actor) => over.has(actor));

/** The largest dummy load of the shelf stands this for good. */
const mostWatts = 200;

/**
 * A further hook-up like the one that sends to the antenna, with a dummy load in the antenna's place; a station without
 * any hook-up gets one for the antenna as well.
 */
export function dummyLoadHookup(station: Station, hookup: Hookup, antennaUnit: string, watts: number): Fix | undefined {
  if (watts > mostWatts) return undefined;
  const line = station.cables.filter((c) => c.a.unit === antennaUnit || c.b.unit === antennaUnit);
  const [cable] = line;
  const antenna = findUnit(station, antennaUnit);
  if (line.length !== 1 || !cable || !antenna) return undefined;
  const from = cable.a.unit === antennaUnit ? cable.b : cable.a;
  const kind = watts <= 5 ? 'dummy-load-5w' : watts <= 100 ? 'dummy-load-100w' : 'dummy-load-1500w';
  const place = placeUnit(station, kind, { x: antenna.position.x, y: antenna.position.y + 160 });
  const id = place.type === 'addUnits' ? (place.units[0]?.id ?? '') : '';
  const load = loadHookup(station, hookup);
  const changes = [place, ...hookupChanges(station, hookup, load, cable)];
  const placed = changes.reduce(edit, station);
  const [port] = kindOf(placed, placed.units.at(-1) ?? antenna).ports;
  if (!port) return undefined;
  const lay = layCable(placed, from, { unit: id, port: port.id }, load.id);
  return {
    name: 'Add a hook-up on a dummy load',
    change: { type: 'all', name: 'Add a dummy load', changes: [...changes, lay] },
  };
}

function loadHookup({ hookups }: Station, { settings }: Hookup): Hookup {
  const numbered = (text: string, between: string, n: number) => (n === 1 ? text : `${text}${between}${n}`);
  const [idOf, nameOf] = [
    (n: number) => numbered('dummy-load', '-', n),
    (n: number) => numbered('On the dummy load', ' ', n),
  ];
  return {
    id: idOf(firstFree((n) => hookups.some((h) => h.id === idOf(n)))),
    name: nameOf(firstFree((n) => hookups.some((h) => h.name === nameOf(n)))),
    ...(settings && { settings }),
  };
}

/** The load's hook-up has the cables of the other one, but for the antenna's. */
function hookupChanges({ hookups, cables }: Station, like: Hookup, load: Hookup, antennaCable: Cable): Change[] {
  const air = { id: 'air', name: 'On the air' };
  const others = hookups.length > 0 ? hookups : [air];
  const listed = cables.filter((c) => c !== antennaCable && c.hookups?.includes(like.id));
  const setHookups = (id: string, list: string[]): Change => ({ type: 'updateCable', id, set: { hookups: list } });
  return [
    { type: 'addHookup', hookup: load },
    ...(hookups.length > 0 ? [] : [{ type: 'addHookup', hookup: air } as const]),
    setHookups(antennaCable.id, antennaCable.hookups ?? others.map((h) => h.id)),
    ...listed.map((c) => setHookups(c.id, [...(c.hookups ?? []), load.id])),
  ];
}
