import { type Change, edit } from '../../station/edit.ts';
import { classOf, findCable } from '../../station/parts.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import type { PortClass, UnitKind } from '../../station/schema/unit-kind.ts';
import { layCable } from './lay-cable.ts';
import { flowOf } from './port-use.ts';

/** The two ports of a kind between which a cable of this class goes on; null where it does not go through. */
export function throughPorts(
  kind: UnitKind,
  portClass: PortClass,
): { readonly in: string; readonly out: string } | null {
  const ports = kind.ports.filter((p) => p.class === portClass);
  const portOfContact = (ref: string) => ref.split('.')[0] ?? '';
  for (const element of kind.elements) {
    const [from, to] =
      element.type === 'rfPath' || element.type === 'matcher'
        ? [element.a, element.b]
        : element.type === 'conductor'
          ? [portOfContact(element.from), portOfContact(element.to)]
          : [];
    const a = ports.find((p) => p.id === from);
    const b = ports.find((p) => p.id === to);
    if (a && b && a !== b)
      return portClass === 'dc' && flowOf(kind, a) === 'gives' ? { in: b.id, out: a.id } : { in: a.id, out: b.id };
  }
  const input = ports.find((p) => flowOf(kind, p) === 'takes');
  const output = ports.find((p) => flowOf(kind, p) === 'gives');
  return input && output ? { in: input.id, out: output.id } : null;
}

/**
 * The change that puts a unit, by the change that sets it down, into a cable: the cable then ends at it, and a further
 * one goes on from it. Both are in the hook-ups that the cable was in. Null where the cable is not there or does not go
 * through the unit.
 */
export function splitCable(station: Station, cableId: string, placed: Change): Change | null {
  const cable = findCable(station, cableId);
  const withUnit = edit(station, placed);
  const unit = withUnit.units.at(-1);
  const kind = unit && withUnit.kinds[unit.kind];
  const through = cable && kind && throughPorts(kind, classOf(station, cable));
  if (!cable || !unit || !through) return null;
  // The first half keeps the number; what was fitted at the end that moves on goes with it.
  const remove: Change = { type: 'removeCables', ids: [cable.id] };
  const first = layCable(edit(withUnit, remove), cable.a, { unit: unit.id, port: through.in });
  const firstHalf = keepOf(first, cable, {
    id: cable.id,
    number: cable.number,
    ...(cable.fuse && { fuse: cable.fuse }),
    ...(cable.note && { note: cable.note }),
  });
  const joined = [remove, firstHalf].reduce(edit, withUnit);
  const second = layCable(joined, { unit: unit.id, port: through.out }, cable.b);
  return {
    type: 'all',
    name: `Put ${unit.name} into ${cable.number}`,
    changes: [placed, remove, firstHalf, keepOf(second, cable, {})],
  };
}

/** A newly laid cable as a part of an older one: its kind, hook-ups and what is said in `own`. */
function keepOf(laid: Change, { kind, hookups }: Cable, own: Partial<Cable>): Change {
  if (laid.type !== 'addCables') return laid;
  return { ...laid, cables: laid.cables.map((c) => ({ ...c, kind, ...(hookups && { hookups }), ...own })) };
}
