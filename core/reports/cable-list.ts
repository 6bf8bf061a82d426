import { adapters } from '../catalog/adapters.ts';
import { formatRating } from '../quantity/format.ts';
import { classOf, hookupsOf, portName } from '../station/parts.ts';
import { plugOf } from '../station/references.ts';
import type { Cable, Station } from '../station/schema.ts';
import type { CableRow } from './report.ts';

const statusWords = { toMake: 'to make', made: 'made', tested: 'tested' } as const;
const fuseWords = { blade: 'blade', 'glass-fast': 'F 5 × 20', 'glass-slow': 'T 5 × 20' } as const;

/** The cable list: every cable of the document once, by class and number as people count (D2 before D10). */
export function listCables(station: Station): CableRow[] {
  const rows = station.cables.map((cable) => rowOf(station, cable));
  return rows.sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
}

function rowOf(station: Station, cable: Cable): CableRow {
  const hookups = hookupsOf(station).filter((h) => cable.hookups?.includes(h.id));
  const fitted = [...(cable.adapters?.a ?? []), ...(cable.adapters?.b ?? [])];
  return {
    id: cable.id,
    number: cable.number,
    class: classOf(station, cable),
    from: portName(station, cable.a),
    to: portName(station, cable.b),
    fromPlug: plugOf(station, cable, 'a')?.name ?? '?',
    toPlug: plugOf(station, cable, 'b')?.name ?? '?',
    kind: station.cableKinds[cable.kind]?.name ?? cable.kind,
    lengthM: cable.lengthM,
    fuse: cable.fuse ? `${formatRating(cable.fuse.amps)} ${fuseWords[cable.fuse.family]}` : '',
    hookups: hookups.map((h) => h.name),
    wiring: (cable.wiring ?? []).map((row) => `${row.a}–${row.b}`).join(', '),
    adapters: fitted.map((id) => adapters[id]?.name ?? id).join(', '),
    status: statusWords[cable.status ?? 'toMake'],
    note: cable.note ?? '',
  };
}
