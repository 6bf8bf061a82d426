import type { Change } from '../../station/edit.ts';
import { cablesAt, portOf } from '../../station/parts.ts';
import type { Cable, Hookup, PortRef, Station } from '../../station/schema/schema.ts';
import { layCable } from './lay-cable.ts';

/**
 * The change that lays a cable while one hook-up of several is looked at. A jack takes one plug: where it has a cable
 * in this hook-up already, that one is unplugged in this hook-up and stays in the others, and the new cable is in this
 * one only; so it is, too, where the jack has its cable in another hook-up. Else it is in all of them.
 */
export function layInHookup(station: Station, a: PortRef, b: PortRef, hookup: Hookup): Change {
  const ids = station.hookups.map((h) => h.id);
  if (!ids.includes(hookup.id)) return layCable(station, a, b);
  const jacks = [a, b].filter((ref) => takesOnePlug(station, ref));
  const inTheWay = jacks.flatMap((ref) => cablesAt(station, hookup, ref.unit, ref.port));
  const unplugged = [...new Set(inTheWay)].flatMap((cable) => withoutHookup(cable, hookup.id, ids));
  const elsewhere = station.cables.some((c) => c.hookups && !c.hookups.includes(hookup.id) && isAt(c, jacks));
  const laid = layCable(station, a, b, unplugged.length > 0 || elsewhere ? hookup.id : undefined);
  return unplugged.length === 0 ? laid : { type: 'all', name: 'Lay cable', changes: [...unplugged, laid] };
}

/** Ends of wires that several of go on one post or stud (common practice). */
const stacking = new Set(['ring-terminals', 'earth-lug', 'bare-wire']);

/** Studs, posts and earth bolts take several wires; everything else one plug. */
const takesOnePlug = (station: Station, ref: PortRef): boolean =>
  !portOf(station, ref).connector.mates.some((mate) => stacking.has(mate));

function withoutHookup(cable: Cable, hookup: string, all: readonly string[]): Change[] {
  const left = (cable.hookups ?? all).filter((id) => id !== hookup);
  return left.length > 0 ? [{ type: 'updateCable', id: cable.id, set: { hookups: left } }] : [];
}

const isAt = ({ a, b }: Cable, refs: readonly PortRef[]): boolean =>
  refs.some((ref) => [a, b].some((end) => end.unit === ref.unit && end.port === ref.port));
