import { classLetters } from '../../catalog/laying/lay-cable.ts';
import type { Change } from '../../station/edit.ts';
import { classOf, unitOf } from '../../station/parts.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { unitCodes } from './unit-codes.ts';

export interface NumberScheme {
  /** `D1, R1` by class; `FS-1` by the unit that a cable comes from; `1, 2` for all. */
  readonly by: 'class' | 'unit' | 'running';
  /** As the units stand on the drawing, from the left, or as the ids are given. */
  readonly order: 'drawing' | 'list';
  /** The first number of each row: a whole one, from 0 to a million. */
  readonly from: number;
}

/** Flags have no room for more, and numbers that are far greater no longer grow by one. */
const mostFirst = 1_000_000;

/**
 * The change that numbers cables anew, all or those named. Locked numbers stay, and so do those of cables that are not
 * named; what they have is left out, so no number is there twice. A cable whose number comes out the same is not
 * touched; with nothing to do the change is empty.
 */
export function numberCables(
  station: Station,
  scheme: NumberScheme,
  ids: readonly string[] = station.cables.map((cable) => cable.id),
): Change {
  const byId = new Map(station.cables.map((cable) => [cable.id, cable]));
  const named = ids.flatMap((id) => byId.get(id) ?? []).filter((cable) => !cable.numberLocked);
  const ordered = scheme.order === 'drawing' ? inDrawingOrder(station, named) : named;
  const moving = new Set(named.map((cable) => cable.id));
  const taken = new Set(station.cables.filter((cable) => !moving.has(cable.id)).map((cable) => cable.number));
  const prefixOf = prefixesBy(station, scheme.by);
  const next = new Map<string, number>();
  const first = Number.isSafeInteger(scheme.from) ? Math.min(Math.max(0, scheme.from), mostFirst) : 1;
  const changes = ordered.flatMap((cable): Change[] => {
    const prefix = prefixOf(cable);
    let n = next.get(prefix) ?? first;
    while (taken.has(`${prefix}${n}`)) n++;
    next.set(prefix, n + 1);
    const number = `${prefix}${n}`;
    return number === cable.number ? [] : [{ type: 'updateCable', id: cable.id, set: { number } }];
  });
  return { type: 'all', name: 'Number cables', changes };
}

function prefixesBy(station: Station, by: NumberScheme['by']): (cable: Cable) => string {
  if (by === 'running') return () => '';
  if (by === 'class') return (cable) => classLetters[classOf(station, cable)];
  const codes = unitCodes(station);
  return (cable) => `${codes.get(cable.a.unit)}-`;
}

/** From left to right, then from top to bottom, by the unit that a cable comes from; of one unit by its ports. */
function inDrawingOrder(station: Station, cables: readonly Cable[]): Cable[] {
  const place = (cable: Cable): readonly number[] => {
    const unit = unitOf(station, cable.a.unit);
    const port = station.kinds[unit.kind]?.ports.findIndex((p) => p.id === cable.a.port) ?? -1;
    return [unit.position.x, unit.position.y, port];
  };
  const places = new Map(cables.map((cable) => [cable, place(cable)]));
  return [...cables].sort((a, b) => compare(places.get(a) ?? [], places.get(b) ?? []));
}

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at === -1 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}
