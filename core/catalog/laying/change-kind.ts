import { type Change, edit } from '../../station/edit.ts';
import { findBrokenReferences } from '../../station/file/check/find-broken-references.ts';
import type { WholeKind } from '../../station/file/kind-file.ts';
import { wholeOf } from '../../station/file/pieces.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { connectorsById } from './place-unit.ts';

export interface KindChange {
  readonly change: Change;
  /** Cables whose port the kind no longer has. */
  readonly lost: readonly Cable[];
  /** Cables whose wiring names contacts that their plugs no longer have; it becomes the usual one. */
  readonly rewired: readonly Cable[];
}

/**
 * The change that gives the units of a kind another description, and what it does to their cables. `first` is made
 * before it: a unit that becomes one of the kind. Null where the document could not be opened again afterwards.
 */
export function changeKind(
  station: Station,
  id: string,
  { kind, connectors }: WholeKind,
  first: Change[] = [],
): KindChange | null {
  const used = kind.ports.map((port) => port.connector);
  const known = { ...connectors, ...connectorsById(used) };
  const mates = used.flatMap((name) => known[name]?.mates[0] ?? []);
  const set: Change = { type: 'setKind', id, kind, connectors: { ...known, ...connectorsById(mates) } };
  const done = edit(station, { type: 'all', name: 'Change unit kind', changes: [...first, set] });
  const lost = station.cables.filter((cable) => !done.cables.some((c) => c.id === cable.id));
  const rewired = done.cables.filter((cable) => !isWired(done, cable));
  const changes = [
    ...first,
    set,
    ...rewired.map((cable): Change => ({ type: 'updateCable', id: cable.id, set: { wiring: undefined } })),
  ];
  const change: Change = { type: 'all', name: 'Change unit kind', changes };
  return findBrokenReferences(wholeOf(edit(station, change))).length > 0 ? null : { change, lost, rewired };
}

/** Whether both plugs of a cable have the contacts that its wiring names. */
const isWired = (station: Station, cable: Cable): boolean =>
  (['a', 'b'] as const).every((end) => {
    const contacts = plugOf(station, cable, end)?.contacts ?? [];
    return (cable.wiring ?? []).every((row) => contacts.some((c) => c.id === row[end]));
  });
