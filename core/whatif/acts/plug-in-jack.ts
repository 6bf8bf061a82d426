import { adapters, matesWith } from '../../catalog/adapters.ts';
import { fitOf } from '../../catalog/fit.ts';
import type { Change } from '../../station/edit.ts';
import { findUnit, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';

export const cableEnds = ['a', 'b'] as const;

export const otherEnd = (end: CableEnd): CableEnd => (end === 'a' ? 'b' : 'a');

export const isSamePort = (one: PortRef, other: PortRef): boolean => one.unit === other.unit && one.port === other.port;

/** Whether two cables are ever plugged in at the same time. */
export const areTogether = ({ hookups: one }: Cable, { hookups: other }: Cable): boolean =>
  !one || !other || one.some((id) => other.includes(id));

/** Whether the plug at an end of a cable goes into a port by hand, made for it or not. Adapters stay on the plug. */
export function goesIn(station: Station, cable: Cable, end: CableEnd, to: PortRef): boolean {
  const plug = outerPlug(station, cable, end);
  if (plug === undefined) return false;
  const { fit } = fitOf(station.connectors, plug, portOf(station, to).port.connector);
  return fit === 'mates' || fit === 'misfit';
}

/** What a hand holds at the end of a cable: its plug, or the outermost of the adapters on it. */
function outerPlug(station: Station, cable: Cable, end: CableEnd): string | undefined {
  const plug = plugOf(station, cable, end)?.id;
  if (plug === undefined) return undefined;
  return (cable.adapters?.[end] ?? []).reduce((held, id) => {
    const adapter = adapters[id];
    if (!adapter) return held;
    return matesWith(station.connectors, held, adapter.a) ? adapter.b : adapter.a;
  }, plug);
}

/**
 * Whether a cable is long enough for one end to be at a unit while the other stays: by the drawing's scale. Without one
 * it is.
 */
export function reaches(station: Station, cable: Cable, end: CableEnd, to: PortRef): boolean {
  const { metresPerUnit } = station.settings;
  const [from, there] = [findUnit(station, cable[otherEnd(end)].unit), findUnit(station, to.unit)];
  if (metresPerUnit === undefined || !from || !there) return true;
  const apart = Math.hypot(from.position.x - there.position.x, from.position.y - there.position.y) * metresPerUnit;
  // What is drawn too short already can't be told by its length.
  const here = findUnit(station, cable[end].unit);
  const now = here ? Math.hypot(from.position.x - here.position.x, from.position.y - here.position.y) : 0;
  return apart <= Math.max(cable.lengthM, now * metresPerUnit);
}

/** A cable with its ends in other ports, as the same thing of copper: its plugs, cores and fuse are what they were. */
export function replug(station: Station, cable: Cable, ends: Readonly<Partial<Record<CableEnd, PortRef>>>): Change {
  const moved = { ...cable, ...ends };
  const plugs: { a?: string; b?: string } = {};
  for (const end of cableEnds) {
    const own = plugOf(station, cable, end)?.id;
    // Named only where the port would give it another one.
    const usual = plugOf(station, { ...moved, plugs: undefined } as Cable, end)?.id;
    const named = ends[end] ? (own !== usual ? own : undefined) : cable.plugs?.[end];
    if (named !== undefined) plugs[end] = named;
  }
  const set = { ...ends, plugs: plugs.a === undefined && plugs.b === undefined ? undefined : plugs };
  return { type: 'updateCable', id: cable.id, set: set as Partial<Omit<Cable, 'id'>> };
}
