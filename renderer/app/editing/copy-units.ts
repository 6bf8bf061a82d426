import { type Cable, freeName, longestId, type Station, type Unit } from '../../../core/index.ts';

/**
 * Copies of units and of the cables among them for a station: with ids, names and cable numbers that are still free
 * in it, a little lower to the right.
 */
export function copyUnits(from: Station, ids: readonly string[], to: Station): { units: Unit[]; cables: Cable[] } {
  const takenIds = new Set([...to.units, ...to.cables].map((item) => item.id));
  const takenNames = new Set(to.units.map((u) => u.name));
  const takenNumbers = new Set(to.cables.map((c) => c.number));
  const newIds = new Map<string, string>();
  const units = from.units
    .filter((unit) => ids.includes(unit.id))
    .map((unit) => {
      const id = free(unit.id, '-', takenIds, longestId);
      newIds.set(unit.id, id);
      const position = { x: unit.position.x + 36, y: unit.position.y + 36 };
      return { ...unit, id, name: free(unit.name, ' ', takenNames), position };
    });
  const cables = from.cables.flatMap((cable) => {
    const a = newIds.get(cable.a.unit);
    const b = newIds.get(cable.b.unit);
    if (a === undefined || b === undefined) return [];
    const id = free(cable.id, '-', takenIds, longestId);
    const number = free(cable.number, '', takenNumbers);
    return [{ ...cable, id, number, a: { ...cable.a, unit: a }, b: { ...cable.b, unit: b } }];
  });
  return { units, cables };
}

/** A name that is free, which it then is no longer. */
function free(wanted: string, join: string, taken: Set<string>, most?: number): string {
  const found = freeName(wanted, join, (name) => taken.has(name), most);
  taken.add(found);
  return found;
}
