import type { Station } from '../../station/schema/schema.ts';
import { type ChangeLine, isSame } from './change-line.ts';

/** Unit kinds that a change describes anew, at the units of the kind. What a document carries of cables never changes. */
export function describedAnew(before: Station, after: Station): ChangeLine[] {
  return Object.entries(after.kinds).flatMap(([id, kind]): ChangeLine[] => {
    const was = before.kinds[id];
    if (!was || isSame(was, kind)) return [];
    const at = before.units.filter((unit) => unit.kind === id).map((unit) => ({ unit: unit.id }));
    return [{ words: `The unit kind “${was.name}” is described anew`, at }];
  });
}

/** Unit kinds, cable kinds and connectors that the document gets. */
export function broughtAlong(before: Station, after: Station): ChangeLine[] {
  return [
    ...fresh('unit kind', before.kinds, after.kinds),
    ...fresh('cable kind', before.cableKinds, after.cableKinds),
    ...fresh('connector', before.connectors, after.connectors),
  ];
}

type Described = Readonly<Record<string, { readonly name: string }>>;

const fresh = (what: string, before: Described, after: Described): ChangeLine[] =>
  Object.entries(after)
    .filter(([id]) => !before[id])
    .map(([, { name }]) => ({ words: `New ${what} “${name}”`, at: [] }));
