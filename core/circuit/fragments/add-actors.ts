import { ditMs } from '../../quantity/dit-ms.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { Actor, Feel } from '../../station/schema/unit-kind.ts';
import type { CircuitPart, CompiledFeel } from '../circuit.ts';
import type { UnitDraft } from './unit-draft.ts';

/** Adds a unit's power and its actors, as they were numbered before; its elements are there already. */
export function addActors(draft: UnitDraft) {
  const { station, unit, kind, fragment } = draft;
  const power = draft.actor('powered') ?? null;
  if (power !== null) {
    const loads = fragment.parts.flatMap((part, i) => (part.kind === 'load' ? [i] : []));
    const feels: CompiledFeel[] = [{ type: 'powered', loads }];
    const base = { key: `${unit.id}.powered`, unit: unit.id, id: 'powered', label: `${unit.name} powered` };
    fragment.actors[power] = { ...base, does: 'powered', feels, operateMs: 0, releaseMs: 0, bounceMs: 0, power: null };
  }
  for (const actor of kind.actors ?? []) {
    const index = draft.actor(actor.id);
    if (index === undefined) continue;
    const list = Array.isArray(actor.feels) ? actor.feels : [actor.feels];
    fragment.actors[index] = {
      key: `${unit.id}.${actor.id}`,
      unit: unit.id,
      id: actor.id,
      label: actor.label,
      does: actor.does,
      feels: draft.gateFor(actor.when) ? list.map((feel) => compileFeel(draft, feel)) : [],
      operateMs: actor.operateMs,
      releaseMs: actor.releaseMs + hangMs(station, actor),
      bounceMs: actor.bounceMs ?? 0,
      power: actor.unpowered ? null : power,
    };
  }
}

function compileFeel(draft: UnitDraft, feel: Feel): CompiledFeel {
  switch (feel.type) {
    case 'operator':
      return { type: 'operator', label: feel.label };
    case 'voltageBelow':
    case 'voltageAbove':
      return {
        type: feel.type,
        node: draft.node(feel.contact),
        reference: draft.node(feel.reference ?? 'chassis'),
        volts: feel.volts,
      };
    case 'currentAbove': {
      const isIt = (p: CircuitPart) => p.origin.type === 'element' && p.origin.element === feel.element;
      return { type: 'currentAbove', part: draft.fragment.parts.findIndex(isIt), amps: feel.amps };
    }
    case 'rfAbove':
      return { type: 'rfAbove', port: draft.rfPort(feel.port), dbm: feel.dbm };
    case 'actor':
      return { type: 'actor', actor: draft.actor(feel.actor) ?? -1 };
  }
}

function hangMs(station: Station, actor: Actor): number {
  const { ms = 0, dits = 0, wordSpaces = 0 } = actor.hang ?? {};
  const dit = ditMs(station.plan.speedWpm);
  return ms + dits * dit + wordSpaces * 7 * dit;
}
