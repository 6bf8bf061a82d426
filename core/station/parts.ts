import { remember, rememberEach } from './remember.ts';
import type { Connector } from './schema/connector.ts';
import type { Cable, Hookup, PortRef, Station, Unit } from './schema/schema.ts';
import type { Port, PortClass, UnitElement, UnitKind } from './schema/unit-kind.ts';

/** The hook-up of a station that names none. */
export const asDrawn: Hookup = { id: 'as-drawn', name: 'As drawn' };

/** The station's hook-ups; one called “As drawn” where none is named. */
export const hookupsOf = (station: Station): readonly Hookup[] =>
  station.hookups.length > 0 ? station.hookups : [asDrawn];

/** The cables that are plugged in for a hook-up. */
export const cablesIn = (station: Station, { id }: Pick<Hookup, 'id'>): readonly Cable[] =>
  station.cables.filter(({ hookups }) => !hookups || hookups.includes(id));

/** By unit and by `unit.port`, the cables of a hook-up that are plugged in there. */
const pluggedInId = rememberEach((station: Station, hookup: string): ReadonlyMap<string, readonly Cable[]> => {
  const plugged = new Map<string, Cable[]>();
  const put = (key: string, cable: Cable) => {
    const list = plugged.get(key);
    if (!list) plugged.set(key, [cable]);
    else if (!list.includes(cable)) list.push(cable);
  };
  for (const cable of cablesIn(station, { id: hookup })) {
    for (const end of [cable.a, cable.b]) {
      put(end.unit, cable);
      put(nameOfPort(end), cable);
    }
  }
  return plugged;
});

/** The cables plugged into a unit, or into one of its ports, in a hook-up. */
export const cablesAt = (station: Station, hookup: Hookup, unit: string, port?: string): readonly Cable[] =>
  pluggedInId(station, hookup.id).get(port === undefined ? unit : nameOfPort({ unit, port })) ?? [];

const nameOfPort = ({ unit, port }: PortRef): string => `${unit}.${port}`;

/** Kinds with own figures, by unit: documents are never changed in place, so a unit's stay right. */
const ownKinds = new WeakMap<Unit, { from: UnitKind; kind: UnitKind }>();

/** A unit's kind with the user's own figures in place of the shelf's. Throws where the document has no such kind. */
export function kindOf(station: Station, unit: Unit): UnitKind {
  const from = station.kinds[unit.kind];
  if (!from) throw new Error(`no unit kind ${unit.kind}`);
  if (!unit.overrides) return from;
  const known = ownKinds.get(unit);
  if (known?.from === from) return known.kind;
  const own = Object.entries(unit.overrides);
  const kind = { ...from, elements: from.elements.map((element) => withOwnFigures(element, own)) };
  ownKinds.set(unit, { from, kind });
  return kind;
}

/** Kinds with their ports on other sides, by unit, as above. */
const turnedKinds = new WeakMap<Unit, { from: UnitKind; kind: UnitKind }>();

/** A unit's kind with its ports on the sides where the user put them; undefined where the document has no such kind. */
export function drawnKind(kinds: Station['kinds'], unit: Unit): UnitKind | undefined {
  const from = kinds[unit.kind];
  const { sides } = unit;
  if (!from || !sides) return from;
  const known = turnedKinds.get(unit);
  if (known?.from === from) return known.kind;
  const kind = { ...from, ports: from.ports.map((port) => ({ ...port, side: sides[port.id] ?? port.side })) };
  turnedKinds.set(unit, { from, kind });
  return kind;
}

function withOwnFigures(element: UnitElement, own: readonly [string, number][]): UnitElement {
  const figures = own.filter(([key]) => key.startsWith(`${element.id}.`));
  if (figures.length === 0) return element;
  const changed: Record<string, unknown> = JSON.parse(JSON.stringify(element));
  for (const [key, value] of figures) setFigure(changed, key.slice(element.id.length + 1).split('.'), value);
  return changed as UnitElement;
}

/** Sets `states.0.amount` and the like, but only where the kind has a number there already. */
function setFigure(target: Record<string, unknown>, path: readonly string[], value: number) {
  const [key, ...rest] = path;
  if (key === undefined) return;
  const present = target[key];
  if (rest.length === 0 && typeof present === 'number') target[key] = value;
  else if (typeof present === 'object' && present !== null) setFigure(present as Record<string, unknown>, rest, value);
}

/** A unit's settings in a hook-up: the kind's initial ones, the unit's, the hook-up's. */
export function settingsIn(kind: UnitKind, unit: Unit, hookup: Hookup): Record<string, string> {
  const initial = Object.fromEntries((kind.settings ?? []).map((s) => [s.id, s.initial]));
  return { ...initial, ...unit.settings, ...hookup.settings?.[unit.id] };
}

const byId = remember((station: Station) => ({
  units: new Map(station.units.map((unit) => [unit.id, unit])),
  cables: new Map(station.cables.map((cable) => [cable.id, cable])),
}));

export const findUnit = (station: Station, id: string): Unit | undefined => byId(station).units.get(id);
export const findCable = (station: Station, id: string): Cable | undefined => byId(station).cables.get(id);

/** The unit with this id. Throws where there is none. */
export function unitOf(station: Station, id: string): Unit {
  const unit = findUnit(station, id);
  if (!unit) throw new Error(`no unit ${id}`);
  return unit;
}

/** A port of a unit with its connector. Throws where there is none. */
export function portOf(station: Station, ref: PortRef): { unit: Unit; port: Port; connector: Connector } {
  const unit = unitOf(station, ref.unit);
  const port = station.kinds[unit.kind]?.ports.find((p) => p.id === ref.port);
  const connector = port && station.connectors[port.connector];
  if (!port || !connector) throw new Error(`no port ${ref.unit}.${ref.port}`);
  return { unit, port, connector };
}

/** `Changeover · receiver`: a port as people say it; the unit alone where no port is named. */
export function portName(station: Station, ref: { readonly unit: string; readonly port?: string }): string {
  if (ref.port === undefined) return unitOf(station, ref.unit).name;
  const { unit, port } = portOf(station, { unit: ref.unit, port: ref.port });
  return port.label === '' ? unit.name : `${unit.name} · ${port.label}`;
}

/** The class of a cable: what its ports carry; where they differ, what end a carries. */
export const classOf = (station: Station, cable: Cable): PortClass => portOf(station, cable.a).port.class;

export const unitName = (station: Station, unit: string): string => unitOf(station, unit).name;

/** The port of a load or supply by its contact, `power` of `power.centre`. */
export const portOfRef = (ref: string): string => ref.split('.')[0] ?? ref;

/** The port that a contact is in; its unit alone for a joint inside the box. */
export const placeOfContact = (unit: string, ref: string): { readonly unit: string; readonly port?: string } =>
  ref.includes('.') ? { unit, port: portOfRef(ref) } : { unit };

/** A unit that is in use in another hook-up only is put aside in this one. */
export const isPutAside = (station: Station, hookup: Hookup, unit: string): boolean =>
  cablesAt(station, hookup, unit).length === 0 && hookupsOf(station).some((h) => cablesAt(station, h, unit).length > 0);
