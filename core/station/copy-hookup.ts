import type { Change } from './edit.ts';
import { firstFree } from './first-free.ts';
import { startOf } from './free-name.ts';
import type { Hookup, Station } from './schema/schema.ts';
import { longestText } from './schema/text-problem.ts';

/**
 * The change that adds a copy of a hook-up under a name and an id that are still free: the same settings, and every
 * cable that is plugged in for it. Null where the station has no such hook-up.
 */
export function copyHookup(station: Station, id: string): { readonly change: Change; readonly copy: Hookup } | null {
  const source = station.hookups.find((h) => h.id === id);
  if (!source) return null;
  const { hookups, cables } = station;
  const number = firstFree((n) => hookups.some((h) => h.id === `hookup-${n}`));
  const nameOf = (n: number) => {
    const tail = n === 1 ? ', copy' : `, copy ${n}`;
    return `${startOf(source.name, longestText - tail.length)}${tail}`;
  };
  const copy: Hookup = {
    ...source,
    id: `hookup-${number}`,
    name: nameOf(firstFree((n) => hookups.some((h) => h.name === nameOf(n)))),
  };
  // A cable that lists no hook-ups is in all of them, the copy too.
  const listed = cables.filter((cable) => cable.hookups?.includes(id));
  const change: Change = {
    type: 'all',
    name: 'Copy hook-up',
    changes: [
      { type: 'addHookup', hookup: copy },
      ...listed.map(({ id: cable, hookups: own = [] }) => ({
        type: 'updateCable' as const,
        id: cable,
        set: { hookups: [...own, copy.id] },
      })),
    ],
  };
  return { change, copy };
}
