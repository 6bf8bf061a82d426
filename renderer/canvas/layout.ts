import { drawnKind, type PortRef, type Station, type Unit, type UnitKind } from '../../core/index.ts';
import { type CardSize, cardSize } from './cards/card-size.ts';
import type { Card } from './paper/arrange.ts';
import type { RouteRequest } from './routing/route-cables.ts';
import type { RouteEnd } from './routing/stub.ts';

export type Positions = ReadonlyMap<string, Unit['position']>;

const sizes = new WeakMap<UnitKind, Map<string, CardSize>>();

/** The size of a unit's card; the same object while kind and name are. */
export function sizeOf(kind: UnitKind, name: string): CardSize {
  const known = sizes.get(kind) ?? new Map<string, CardSize>();
  sizes.set(kind, known);
  const size = known.get(name) ?? cardSize(kind, name);
  known.set(name, size);
  return size;
}

/** No unit is being dragged. */
export const nowhere: Positions = new Map();

/** All cards on the paper; `moved` has units that are being dragged. */
export const cardsOf = (station: Station, moved: Positions = nowhere): Card[] =>
  station.units.flatMap((unit) => {
    const kind = drawnKind(station.kinds, unit);
    return kind ? [{ id: unit.id, ...(moved.get(unit.id) ?? unit.position), ...boxOf(sizeOf(kind, unit.name)) }] : [];
  });

/** All cards and cables as the router wants them; `moved` has units that are being dragged. */
export function layoutOf(station: Station, moved: Positions): { cards: Card[]; requests: RouteRequest[] } {
  const units = new Map(station.units.map((u) => [u.id, u]));
  const endAt = (ref: PortRef): RouteEnd | null => {
    const unit = units.get(ref.unit);
    const kind = unit && drawnKind(station.kinds, unit);
    const spot = kind && sizeOf(kind, unit.name).ports.find((p) => p.id === ref.port);
    if (!spot) return null;
    const corner = moved.get(unit.id) ?? unit.position;
    return { x: corner.x + spot.x, y: corner.y + spot.y, side: spot.side };
  };
  const requests = station.cables.flatMap(({ id, number, a, b }) => {
    const [from, to] = [endAt(a), endAt(b)];
    return from && to ? [{ id, number, a: from, b: to }] : [];
  });
  return { cards: cardsOf(station, moved), requests };
}

const boxOf = ({ width, height }: CardSize) => ({ width, height });
