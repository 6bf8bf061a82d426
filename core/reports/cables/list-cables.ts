import { adapters } from '../../catalog/adapters.ts';
import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { classOf, hookupsOf, portName } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import { ringAt } from '../../station/ring-at.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { orderedFuse } from '../ordered-fuse.ts';
import type { CableRow } from '../report-rows.ts';
import { cableConductors } from './cable-conductors.ts';
import { ringsOf } from './rings.ts';

const statusWords = { toMake: 'to make', made: 'made', tested: 'tested' } as const;

/** The cable list: every cable of the document once, by class and number as people count (D2 before D10). */
export function listCables(station: Station): CableRow[] {
  const rows = station.cables.map((cable) => rowOf(station, cable));
  return rows.sort((a, b) => asPeopleCount(a.number, b.number));
}

function rowOf(station: Station, cable: Cable): CableRow {
  const hookups = hookupsOf(station).filter((h) => cable.hookups?.includes(h.id));
  const fitted = [...(cable.adapters?.a ?? []), ...(cable.adapters?.b ?? [])];
  const kind = station.cableKinds[cable.kind];
  const [fromRing, toRing] = [ringAt(station, cable.a), ringAt(station, cable.b)];
  return {
    id: cable.id,
    number: cable.number,
    numberLocked: cable.numberLocked ?? false,
    class: classOf(station, cable),
    from: portName(station, cable.a),
    to: portName(station, cable.b),
    fromPlug: plugOf(station, cable, 'a')?.name ?? '?',
    toPlug: plugOf(station, cable, 'b')?.name ?? '?',
    ...(fromRing && { fromRing }),
    ...(toRing && { toRing }),
    kind: kind?.name ?? cable.kind,
    conductors: kind ? cableConductors(kind) : '',
    lengthM: cable.lengthM,
    rings: ringsOf(station, cable),
    fuse: cable.fuse ? orderedFuse(cable.fuse) : '',
    hookups: hookups.map((h) => h.name),
    wiring: (cable.wiring ?? []).map((row) => `${row.a}–${row.b}`).join(', '),
    adapters: fitted.map((id) => adapters[id]?.name ?? id).join(', '),
    status: statusWords[cable.status ?? 'toMake'],
    note: cable.note ?? '',
  };
}
