import { kindOf, unitOf } from '../../station/parts.ts';
import { rememberEach } from '../../station/remember.ts';
import type { Cable, PortRef, Station } from '../../station/schema/schema.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';

/** Two ports of one unit that are the same but for their names: outlets of one strip with the same fuse, studs of one bar. */
export const areAlike = (station: Station, one: PortRef, other: PortRef): boolean =>
  one.unit === other.unit && looksOf(station, one) === looksOf(station, other);

/** All that a kind says of a port, without the port's name. */
export function looksOf(station: Station, { unit, port }: PortRef): string {
  return looks(kindOf(station, unitOf(station, unit)), port);
}

const looks = rememberEach((kind: UnitKind, port: string): string => {
  const { id: _, label: __, side: ___, note: ____, ...own } = kind.ports.find((p) => p.id === port) ?? {};
  const behind = kind.elements.filter((element) => namesPort(element, port)).map(({ id: _, ...rest }) => rest);
  const said = JSON.stringify([own, behind], (_, value) =>
    typeof value === 'string' && isOfPort(value, port) ? `*${value.slice(port.length)}` : value,
  );
  // What else of the unit depends on it, a switch or a limit, makes it a port of its own.
  const felt = JSON.stringify([kind.actors ?? [], kind.isolated ?? []]).includes(`"${port}`);
  return felt ? `${port} ${said}` : said;
});

const isOfPort = (ref: string, port: string): boolean => ref === port || ref.startsWith(`${port}.`);

const namesPort = (element: object, port: string): boolean =>
  Object.values(element).some((value) => typeof value === 'string' && isOfPort(value, port));

/** All that is in a lead, whatever its number, its length and where it goes. */
export const insideOf = ({ kind, wiring, fuse, screenAt, adapters }: Cable): string =>
  JSON.stringify([kind, wiring, fuse && { ...fuse, atM: 0 }, screenAt, adapters]);
