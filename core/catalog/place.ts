import type { Connector } from '../station/connector.ts';
import type { Change } from '../station/edit.ts';
import { firstFree } from '../station/first-free.ts';
import type { Station, Unit } from '../station/schema.ts';
import { connectors } from './connectors.ts';
import { shelf } from './kinds/index.ts';

/**
 * The change that puts a unit of the shelf on the drawing, with a name and an id that are still free: `Keyer`, then
 * `Keyer 2`. The document gets the kind and its connectors. Throws for a kind that the shelf does not have.
 */
export function placeUnit(station: Station, kindId: string, position: Unit['position']): Change {
  const kind = shelf.find((item) => item.id === kindId)?.kind ?? station.kinds[kindId];
  if (!kind) throw new Error(`no unit kind ${kindId}`);
  const base = kind.name.split(',')[0] ?? kind.name;
  const number = firstFree(
    (n) =>
      station.units.some((u) => u.name === numbered(base, ' ', n)) ||
      station.units.some((u) => u.id === numbered(kindId, '-', n)),
  );
  const unit: Unit = { id: numbered(kindId, '-', number), kind: kindId, name: numbered(base, ' ', number), position };
  const carried = { kinds: { [kindId]: kind }, connectors: connectorsById(kind.ports.map((p) => p.connector)) };
  return { type: 'addUnits', units: [unit], carried };
}

const numbered = (base: string, between: string, n: number): string => (n === 1 ? base : `${base}${between}${n}`);

/** The catalogue's connectors with these ids, for a document to carry. */
export const connectorsById = (ids: readonly string[]): Record<string, Connector> =>
  Object.fromEntries(
    ids.flatMap((id) => {
      const connector = connectors[id];
      return connector ? [[id, connector]] : [];
    }),
  );
