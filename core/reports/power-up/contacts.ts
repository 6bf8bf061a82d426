import { portOf } from '../../station/parts.ts';
import { remember } from '../../station/remember.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';

/** A contact of a unit that a meter's tip can reach. */
export interface Reachable {
  readonly port: PortRef;
  readonly name: string;
}

/** All contacts of a station's ports by the name of their node. */
export const reachable = remember(
  (station: Station): ReadonlyMap<string, Reachable> =>
    new Map(
      station.units.flatMap((unit) =>
        (station.kinds[unit.kind]?.ports ?? []).flatMap((port) =>
          (station.connectors[port.connector]?.contacts ?? []).map((contact): [string, Reachable] => [
            `${unit.id}.${port.id}.${contact.id}`,
            { port: { unit: unit.id, port: port.id }, name: contact.name },
          ]),
        ),
      ),
    ),
);

/** What a contact is called, by its node: `centre`. */
export const contactName = (station: Station, node: string): string => reachable(station).get(node)?.name ?? 'contact';

/** Whether a meter's tips belong into a port: not into a USB socket, where one slip joins 5 V to what is beside it. */
export function isForTips(station: Station, ref: PortRef): boolean {
  const { port, connector } = portOf(station, ref);
  return port.class !== 'data' && !connector.family.startsWith('usb');
}

/** The node of a port's contact by what it is for; of one that it has not the name is of no node. */
export function nodeOfRole(station: Station, port: PortRef, role: 'live' | 'second' | 'return'): string {
  const contact = portOf(station, port).connector.contacts.find((c) => c.role === role);
  return `${port.unit}.${port.port}.${contact?.id}`;
}

/** Connectors whose contacts can't be reached with the plug in. */
const closed: ReadonlySet<string> = new Set(['barrel', 'phono', 'mono', 'stereo', 'multi']);

/** How a port is read with its plug in. */
export const reachWords = (station: Station, port: PortRef): string =>
  closed.has(portOf(station, port).connector.face) ? ', by a Y lead or with the sleeve of the plug back' : '';
