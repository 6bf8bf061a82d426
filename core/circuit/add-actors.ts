import { ditMs } from '../quantity/dit-ms.ts';
import type { Station, Unit } from '../station/schema/schema.ts';
import type { Actor, Feel, UnitKind } from '../station/schema/unit-kind.ts';
import type { CircuitPart, CompiledFeel } from './circuit.ts';
import type { FragmentDraft, GateFor } from './fragment-draft.ts';

/** Adds a unit's power and its actors, as they were numbered before; its elements are there already. */
export function addActors(draft: FragmentDraft, station: Station, unit: Unit, kind: UnitKind, gateFor: GateFor) {
  const power = draft.actorOf.get(`${unit.id}.powered`) ?? null;
  if (power !== null) {
    const loads = draft.parts.flatMap((part, i) => (part.kind === 'load' ? [i] : []));
    const feels: CompiledFeel[] = [{ type: 'powered', loads }];
    const base = { key: `${unit.id}.powered`, unit: unit.id, id: 'powered', label: `${unit.name} powered` };
    draft.actors[power] = { ...base, does: 'powered', feels, operateMs: 0, releaseMs: 0, bounceMs: 0, power: null };
  }
  for (const actor of kind.actors ?? []) {
    const index = draft.actorOf.get(`${unit.id}.${actor.id}`);
    if (index === undefined) continue;
    const list = Array.isArray(actor.feels) ? actor.feels : [actor.feels];
    draft.actors[index] = {
      key: `${unit.id}.${actor.id}`,
      unit: unit.id,
      id: actor.id,
      label: actor.label,
      does: actor.does,
      feels: gateFor(actor.when) ? list.map((feel) => compileFeel(draft, unit, feel)) : [],
      operateMs: actor.operateMs,
      releaseMs: actor.releaseMs + hangMs(station, actor),
      bounceMs: actor.bounceMs ?? 0,
      power: actor.unpowered ? null : power,
    };
  }
}

function compileFeel(draft: FragmentDraft, unit: Unit, feel: Feel): CompiledFeel {
  const node = (ref: string) => draft.node(`${unit.id}.${ref}`);
  switch (feel.type) {
    case 'operator':
      return { type: 'operator', label: feel.label };
    case 'voltageBelow':
    case 'voltageAbove':
      return {
        type: feel.type,
        node: node(feel.contact),
        reference: node(feel.reference ?? 'chassis'),
        volts: feel.volts,
      };
    case 'currentAbove': {
      const isIt = (p: CircuitPart) => p.origin.type === 'element' && p.origin.element === feel.element;
      return { type: 'currentAbove', part: draft.parts.findIndex(isIt), amps: feel.amps };
    }
    case 'rfAbove':
      return { type: 'rfAbove', port: draft.rfPort(`${unit.id}.${feel.port}`), dbm: feel.dbm };
    case 'actor':
      return { type: 'actor', actor: draft.actorOf.get(`${unit.id}.${feel.actor}`) ?? -1 };
  }
}

function hangMs(station: Station, actor: Actor): number {
  const { ms = 0, dits = 0, wordSpaces = 0 } = actor.hang ?? {};
  const dit = ditMs(station.plan.speedWpm);
  return ms + dits * dit + wordSpaces * 7 * dit;
}
