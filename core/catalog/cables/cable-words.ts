import { formatLength } from '../../quantity/format.ts';
import { edit } from '../../station/edit.ts';
import { portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import { adapterChain, adapters } from '../adapters.ts';
import { layCable } from '../laying/lay-cable.ts';

/** `D4: two-core lead, AWG 18, 0.6 m, two-pole plug to barrel plug, wired plus to shell`: a cable in one line. */
export function cableWords(station: Station, cable: Cable): string {
  const plug = (end: CableEnd) => plugOf(station, cable, end)?.name ?? 'bare wire';
  const ends = plug('a') === plug('b') ? `${plug('a')} on both ends` : `${plug('a')} to ${plug('b')}`;
  const wiring = cable.wiring?.map((row) => `${row.a} to ${row.b}`).join(', ');
  const fitted = (['a', 'b'] as const).flatMap((end) => neededAdapters(station, cable, end) ?? []);
  const parts = [
    station.cableKinds[cable.kind]?.name ?? cable.kind,
    formatLength(cable.lengthM, station.settings.units),
    ends,
  ];
  if (wiring) parts.push(`wired ${wiring}`);
  if (fitted.length > 0) parts.push(`with adapter ${fitted.map((id) => adapters[id]?.name ?? id).join(', then ')}`);
  return `${cable.number}: ${parts.join(', ')}`;
}

/** The cable that would be laid between two ports, in one line. */
export function proposalWords(station: Station, from: PortRef, to: PortRef): string {
  const laid = edit(station, layCable(station, from, to));
  const cable = laid.cables.at(-1);
  return cable ? cableWords(laid, cable) : '';
}

/** The adapters that an end of a cable needs at its port, from the plug on; none where it fits, null where none are known. */
export function neededAdapters(station: Station, cable: Cable, end: CableEnd): readonly string[] | null {
  const plug = plugOf(station, cable, end);
  return plug ? adapterChain(station.connectors, plug.id, portOf(station, cable[end]).port.connector) : null;
}
