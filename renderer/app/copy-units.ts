import type { Cable, Station, Unit } from '../../core/index.ts';

/** Copies of units and of the cables among them: ids, names and cable numbers that are still free, a little lower to the right. */
export function copyUnits(station: Station, ids: readonly string[]): { units: Unit[]; cables: Cable[] } {
  const takenIds = new Set([...station.units, ...station.cables].map((item) => item.id));
  const takenNames = new Set(station.units.map((u) => u.name));
  const takenNumbers = new Set(station.cables.map((c) => c.number));
  const newIds = new Map<string, string>();
  const units = station.units
    .filter((unit) => ids.includes(unit.id))
    .map((unit) => {
      const id = free(unit.id, '-', takenIds);
      newIds.set(unit.id, id);
      const position = { x: unit.position.x + 36, y: unit.position.y + 36 };
      return { ...unit, id, name: free(unit.name, ' ', takenNames), position };
    });
  const cables = station.cables.flatMap((cable) => {
    const a = newIds.get(cable.a.unit);
    const b = newIds.get(cable.b.unit);
    if (a === undefined || b === undefined) return [];
    const id = free(cable.id, '-', takenIds);
    const number = free(cable.number, '', takenNumbers);
    return [{ ...cable, id, number, a: { ...cable.a, unit: a }, b: { ...cable.b, unit: b } }];
  });
  return { units, cables };
}

/** `Receiver` gives `Receiver 2`, `Receiver 2` gives `Receiver 3`: the next that is free, which is then taken. */
function free(wanted: string, join: string, taken: Set<string>): string {
  const [, stem = wanted, digits = ''] = /^(.*?)[- ]?(\d*)$/.exec(wanted) ?? [];
  let count = digits === '' ? 2 : Number(digits) + 1;
  while (taken.has(`${stem}${join}${count}`)) count++;
  const found = `${stem}${join}${count}`;
  taken.add(found);
  return found;
}
