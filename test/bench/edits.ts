import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { moveCableEnd } from '../../core/catalog/laying/move-cable-end.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { elementFigures } from '../../core/station/element-figures.ts';
import { classOf, kindOf } from '../../core/station/parts.ts';
import type { Cable, PortRef, Station, Unit } from '../../core/station/schema/schema.ts';
import type { PortClass } from '../../core/station/schema/unit-kind.ts';

type OfCable = (station: Station, cable: Cable) => Change | null;
type OfUnit = (station: Station, unit: Unit) => Change | null;

const signals: readonly PortClass[] = ['control', 'audio', 'data'];

const stretched =
  (...classes: readonly PortClass[]): OfCable =>
  (station, { id, ...cable }) =>
    classes.includes(classOf(station, { id, ...cable }))
      ? { type: 'updateCable', id, set: { lengthM: cable.lengthM + 0.37 } }
      : null;

/** Edits of one cable, as users make them. */
const ofCable: Readonly<Record<string, OfCable>> = {
  'coax-length': stretched('rf'),
  'power-length': stretched('dc'),
  'signal-length': stretched(...signals),
  'plug-moved': (station, cable) => moveCableEnd(station, cable.id, 'b', nextPort(station, cable)),
  'cable-removed': (_, { id }) => ({ type: 'removeCables', ids: [id] }),
  'cable-added': (station, cable) => {
    const to = nextPort(station, cable);
    return to.unit === cable.a.unit && to.port === cable.a.port ? null : layCable(station, cable.a, to);
  },
};

/** Edits of one unit. */
const ofUnit: Readonly<Record<string, OfUnit>> = {
  'unit-moved': (_, { id, position: { x, y } }) => ({ type: 'moveUnits', moves: [{ id, position: { x: x + 18, y } }] }),
  'unit-renamed': (_, { id, name }) => ({ type: 'updateUnit', id, set: { name: `${name}, renamed` } }),
  'figure-overridden': (station, unit) => {
    const kind = kindOf(station, unit);
    const [figure] = kind.elements.flatMap((element) => elementFigures(kind, element)).filter((f) => f.value > 0);
    if (!figure) return null;
    const overrides = { ...unit.overrides, [figure.key]: figure.value * 1.01 };
    return { type: 'updateUnit', id: unit.id, set: { overrides } };
  },
  'switch-set': (station, unit) => {
    const [setting] = kindOf(station, unit).settings ?? [];
    const now = setting && (unit.settings?.[setting.id] ?? setting.initial);
    const other = setting?.options.find((option) => option.id !== now);
    if (!setting || !other) return null;
    return { type: 'updateUnit', id: unit.id, set: { settings: { ...unit.settings, [setting.id]: other.id } } };
  },
};

/** The port of the same class that stands after the one at end b of a cable, after the last one the first. */
function nextPort(station: Station, cable: Cable): PortRef {
  const here = classOf(station, cable);
  const ports = station.units.flatMap((unit) =>
    kindOf(station, unit)
      .ports.filter((port) => port.class === here)
      .map((port) => ({ unit: unit.id, port: port.id })),
  );
  const at = ports.findIndex(({ unit, port }) => unit === cable.b.unit && port === cable.b.port);
  return ports[(at + 1) % ports.length] ?? cable.b;
}

/** By kind of edit the stations after it, one for every cable or unit in turn, or for every so many of them. */
export function* editedStations(station: Station, every = 1): Generator<{ kind: string; stations: Station[] }> {
  const after = <T>(items: readonly T[], make: (station: Station, item: T) => Change | null) =>
    items
      .filter((_, i) => i % every === 0)
      .flatMap((item) => make(station, item) ?? [])
      .map((change) => edit(station, change));
  for (const [kind, make] of Object.entries(ofCable)) yield { kind, stations: after(station.cables, make) };
  for (const [kind, make] of Object.entries(ofUnit)) yield { kind, stations: after(station.units, make) };
}
