import type { Change } from '../../station/edit.ts';
import type { WholeKind } from '../../station/file/kind-file.ts';
import { writeSorted } from '../../station/file/write-station.ts';
import { firstFree } from '../../station/first-free.ts';
import type { Connector } from '../../station/schema/connector.ts';
import { longestId } from '../../station/schema/numbers.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';
import { connectors } from '../connectors.ts';
import { shelf } from '../kinds/index.ts';

/**
 * The change that puts a unit of the shelf on the drawing, with a name and an id that are still free: `Keyer`, then
 * `Keyer 2`. The document gets the kind and its connectors. `own` is a kind that is not on the shelf; where the document
 * has another one by its id, it goes in beside that. Throws for a kind that neither shelf nor document have.
 */
export function placeUnit(station: Station, wanted: string, position: Unit['position'], own?: WholeKind): Change {
  const kind = own?.kind ?? shelf.find((item) => item.id === wanted)?.kind ?? station.kinds[wanted];
  if (!kind) throw new Error(`no unit kind ${wanted}`);
  const kindId = own ? idInDocument(station, wanted, own.kind) : wanted;
  const base = kind.name.split(',')[0] ?? kind.name;
  const number = firstFree(
    (n) =>
      station.units.some((u) => u.name === numbered(base, ' ', n)) ||
      station.units.some((u) => u.id === numberedId(kindId, n)),
  );
  const unit: Unit = { id: numberedId(kindId, number), kind: kindId, name: numbered(base, ' ', number), position };
  const connectors = { ...own?.connectors, ...connectorsById(kind.ports.map((p) => p.connector)) };
  return { type: 'addUnits', units: [unit], carried: { kinds: { [kindId]: kind }, connectors } };
}

/** The id under which the document has, or would get, this very kind. */
function idInDocument(station: Station, wanted: string, kind: UnitKind): string {
  const isOther = (id: string) => {
    const present = station.kinds[id];
    return present !== undefined && writeSorted(present) !== writeSorted(kind);
  };
  return numberedId(
    wanted,
    firstFree((n) => isOther(numberedId(wanted, n))),
  );
}

const numbered = (base: string, between: string, n: number): string => (n === 1 ? base : `${base}${between}${n}`);

/** The same for an id, which may not be longer than ids are. */
const numberedId = (base: string, n: number): string =>
  n === 1 ? base : numbered(base.slice(0, longestId - `-${n}`.length), '-', n);

/** The catalogue's connectors with these ids, for a document to carry. */
export const connectorsById = (ids: readonly string[]): Record<string, Connector> =>
  Object.fromEntries(
    ids.flatMap((id) => {
      const connector = connectors[id];
      return connector ? [[id, connector]] : [];
    }),
  );
