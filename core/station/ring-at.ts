import { findUnit } from './parts.ts';
import type { RingColour } from './schema/ring-colour.ts';
import type { PortRef, Station } from './schema/schema.ts';

/** The ring at a jack and on the plug that is drawn in it; undefined where there is none. */
export const ringAt = (station: Station, { unit, port }: PortRef): RingColour | undefined => {
  const rings = findUnit(station, unit)?.rings;
  return rings && Object.hasOwn(rings, port) ? rings[port] : undefined;
};
