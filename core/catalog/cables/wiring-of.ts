import { plugOf } from '../../station/plug-of.ts';
import { rememberEach } from '../../station/remember.ts';
import type { Connector, ContactRole } from '../../station/schema/connector.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { joinContacts } from '../fit.ts';

/** One conductor of a cable: which contact of plug a it joins to which of plug b, and what it is for. */
export interface CableConductor {
  readonly a: string;
  readonly b: string;
  readonly role: ContactRole;
}

/**
 * The conductors of a cable: its own `wiring` where it has one, else contact to contact by name or by role (live to
 * live, ring to ring, return to return) as far as its cores and screen go. Roles are those of plug a, or of a contact called plus or minus. Empty where a
 * plug is not known.
 */
export const wiringOf = rememberEach((station: Station, cable: Cable): readonly CableConductor[] => {
  const a = plugOf(station, cable, 'a');
  const b = plugOf(station, cable, 'b');
  if (!a || !b) return [];
  if (cable.wiring) return cable.wiring.map((row) => ({ ...row, role: roleOfRow(a, row) }));
  const kind = station.cableKinds[cable.kind];
  const most = kind ? kind.cores + (kind.screen ? 1 : 0) : Number.POSITIVE_INFINITY;
  const rows = joinContacts(a, b).map(([from, to]) => ({ a: from, b: to, role: roleOf(a, from) }));
  // A lead with fewer cores than contacts still has its live core and its return.
  const firstSecond = (row: CableConductor) => (row.role === 'second' ? 1 : 0);
  return rows.sort((x, y) => firstSecond(x) - firstSecond(y)).slice(0, most);
});

/** A core on a contact called plus is the live one, whatever its contact at the other end is called, if not minus. */
function roleOfRow(plug: Connector, row: { readonly a: string; readonly b: string }): ContactRole {
  const [isPlus, isMinus] = ['plus', 'minus'].map((id) => row.a === id || row.b === id);
  if (isPlus === isMinus) return roleOf(plug, row.a);
  return isPlus ? 'live' : 'return';
}

const roleOf = (plug: Connector, contact: string): ContactRole =>
  plug.contacts.find((c) => c.id === contact)?.role ?? 'live';
