import { plugOf } from '../../station/plug-of.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';

/** Whether a cable is bought with its plugs on: its kind is, and no other plugs were put on it. */
export function isReadyMade(station: Station, cable: Cable): boolean {
  const kind = station.cableKinds[cable.kind];
  if (!kind?.plugs) return kind?.readyMade ?? false;
  const own = [plugOf(station, cable, 'a')?.id, plugOf(station, cable, 'b')?.id];
  // A lead may lie either way round.
  return [kind.plugs.a, kind.plugs.b].sort().join() === own.sort().join();
}
