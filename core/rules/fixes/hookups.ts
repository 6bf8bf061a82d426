import { layCable } from '../../catalog/lay.ts';
import { placeUnit } from '../../catalog/place.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import { edit } from '../../station/edit.ts';
import { cablesAt, findUnit, hookupsOf, kindOf } from '../../station/parts.ts';
import type { Cable, PortRef, Station } from '../../station/schema.ts';
import type { UnitElement } from '../../station/unit-kind.ts';
import { portOfRef } from '../look.ts';
import type { Report } from '../rule.ts';

type Fix = NonNullable<Report['fix']>;

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

/** Two hook-ups instead of none: as it is, and with a dummy load in place of the antenna. */
export function dummyLoadHookup(
  station: Station,
  circuit: Circuit,
  antennaUnit: string,
  watts: number,
): Fix | undefined {
  if (station.hookups.length > 0 || watts > mostWatts) return undefined;
  const line = station.cables.filter((c) => c.a.unit === antennaUnit || c.b.unit === antennaUnit);
  const [cable] = line;
  const antenna = findUnit(station, antennaUnit);
  if (line.length !== 1 || !cable || !antenna || circuit.rf.ports.length === 0) return undefined;
  const from = cable.a.unit === antennaUnit ? cable.b : cable.a;
  const kind = watts <= 5 ? 'dummy-load-5w' : watts <= 100 ? 'dummy-load-100w' : 'dummy-load-1500w';
  const place = placeUnit(station, kind, { x: antenna.position.x, y: antenna.position.y + 160 });
  const id = place.type === 'addUnits' ? (place.units[0]?.id ?? '') : '';
  const [air, load] = [
    { id: 'air', name: 'On the air' },
    { id: 'dummy-load', name: 'On the dummy load' },
  ];
  const changes = [
    place,
    { type: 'addHookup', hookup: load } as const,
    { type: 'addHookup', hookup: air } as const,
    { type: 'updateCable', id: cable.id, set: { hookups: [air.id] } as Partial<Omit<Cable, 'id'>> } as const,
  ];
  const placed = changes.reduce(edit, station);
  const [port] = kindOf(placed, placed.units.at(-1) ?? antenna).ports;
  if (!port) return undefined;
  const lay = layCable(placed, from, { unit: id, port: port.id }, load.id);
  return {
    name: 'Add a hook-up on a dummy load',
    change: { type: 'all', name: 'Add a dummy load', changes: [...changes, lay] },
  };
}
