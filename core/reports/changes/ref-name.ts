import { findUnit, portName } from '../../station/parts.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';

/** A port as people say it; its unit alone where the port is gone, and the id where both are. */
export function refName(station: Station, ref: PortRef): string {
  const unit = findUnit(station, ref.unit);
  if (!unit) return ref.unit;
  const known = station.kinds[unit.kind]?.ports.some((p) => p.id === ref.port);
  return known ? portName(station, ref) : unit.name;
}
