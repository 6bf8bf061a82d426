import { findUnit } from './parts.ts';
import { rememberEach } from './remember.ts';
import type { Connector } from './schema/connector.ts';
import type { Cable, CableEnd, Station } from './schema/schema.ts';

/** The plug on one end of a cable: its own, its kind's, or the first mate of the port. Undefined where the port isn't known. */
export function plugOf(station: Station, cable: Cable, end: CableEnd): (Connector & { id: string }) | undefined {
  const id = cable.plugs?.[end] ?? station.cableKinds[cable.kind]?.plugs?.[end] ?? mateOfPort(station, cable, end);
  const connector = id === undefined ? undefined : station.connectors[id];
  return connector && id !== undefined ? withId(connector, id) : undefined;
}

const withId = rememberEach((connector: Connector, id: string) => ({ ...connector, id }));

function mateOfPort(station: Station, cable: Cable, end: CableEnd): string | undefined {
  const unit = findUnit(station, cable[end].unit);
  const port = unit && station.kinds[unit.kind]?.ports.find((p) => p.id === cable[end].port);
  return port && station.connectors[port.connector]?.mates[0];
}
