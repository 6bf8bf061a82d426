import type { Change } from '../../station/edit.ts';
import { edit } from '../../station/edit.ts';
import { findCable } from '../../station/parts.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import { layCable } from './lay-cable.ts';

/**
 * The change that plugs one end of a cable in elsewhere. Kind, length, number, fuse and note stay; plugs, adapters and
 * wiring are those that a cable between the two ports would be laid with. Null where the cable is not there or would end where it begins.
 */
export function moveCableEnd(station: Station, cableId: string, end: CableEnd, to: PortRef): Change | null {
  const cable = findCable(station, cableId);
  if (!cable) return null;
  const [a, b] = end === 'a' ? [to, cable.b] : [cable.a, to];
  if (a.unit === b.unit && a.port === b.port) return null;
  const laid = layCable(edit(station, { type: 'removeCables', ids: [cable.id] }), a, b);
  if (laid.type !== 'addCables' || !laid.cables[0]) return null;
  const { plugs, wiring } = laid.cables[0];
  const set = { a, b, plugs, wiring, adapters: undefined } as Partial<Omit<Cable, 'id'>>;
  const { cableKinds: _, ...carried } = laid.carried ?? {};
  return {
    type: 'all',
    name: `Move an end of ${cable.number}`,
    changes: [{ type: 'updateCable', id: cable.id, set, carried }],
  };
}
