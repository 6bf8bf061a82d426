import { kindOf, settingsIn } from '../station/parts.ts';
import type { Hookup, Station, Unit } from '../station/schema/schema.ts';
import type { Condition, UnitKind } from '../station/schema/unit-kind.ts';
import { addActors } from './add-actors.ts';
import { addElement } from './add-element.ts';
import type { Fragment, Gate } from './circuit.ts';
import { FragmentDraft, type GateFor } from './fragment-draft.ts';

/** Metal to metal inside a box, in ohms; common practice for a screwed chassis joint. */
const chassisOhms = 0.005;

/** What a unit's fragment is made from. */
export const unitSource = (station: Station, hookup: Hookup, unit: Unit): readonly unknown[] => [
  unit.id,
  unit.name,
  station.kinds[unit.kind],
  unit.overrides,
  unit.settings,
  hookup.settings?.[unit.id],
  station.connectors,
  station.plan,
];

/** A unit in a hook-up: its contacts, what is between them, what switches, and its metal. */
export function unitFragment(station: Station, hookup: Hookup, unit: Unit, from: readonly unknown[]): Fragment {
  const draft = new FragmentDraft(`unit ${unit.id}`, from);
  const kind = kindOf(station, unit);
  const settings = settingsIn(kind, unit, hookup);
  // Actors get their numbers first: elements and other actors name them.
  nameActors(draft, unit, kind);
  const gateFor: GateFor = (condition) => compileGate(draft, unit.id, settings, condition);
  for (const element of kind.elements) addElement(draft, station, unit, kind, element, gateFor);
  addActors(draft, station, unit, kind, gateFor);
  addChassis(draft, station, unit, kind);
  // Whatever has not been mentioned yet may have a plug in it.
  for (const port of kind.ports) {
    for (const { id } of station.connectors[port.connector]?.contacts ?? []) draft.node(`${unit.id}.${port.id}.${id}`);
    if (port.class === 'rf') draft.rfPort(`${unit.id}.${port.id}`);
  }
  return draft;
}

/** Numbers for a unit's power (where it has a load) and for each of its actors. */
function nameActors(draft: FragmentDraft, unit: Unit, kind: UnitKind) {
  const hasLoad = kind.elements.some((e) => e.type === 'load');
  const names = [...(hasLoad ? ['powered'] : []), ...(kind.actors ?? []).map((a) => a.id)];
  for (const name of names) draft.actorOf.set(`${unit.id}.${name}`, draft.actorOf.size);
}

function compileGate(
  draft: FragmentDraft,
  unit: string,
  settings: Record<string, string>,
  condition: Condition | undefined,
): Gate | null {
  if (!condition) return [];
  for (const [setting, value] of Object.entries(condition.settings ?? {})) if (settings[setting] !== value) return null;
  const gate: { actor: number; on: boolean }[] = [];
  const add = (name: string, on: boolean) => {
    const actor = draft.actorOf.get(`${unit}.${name}`);
    if (actor !== undefined) gate.push({ actor, on });
  };
  for (const name of condition.on ?? []) add(name, true);
  for (const name of condition.off ?? []) add(name, false);
  if (condition.powered !== undefined) add('powered', condition.powered);
  return gate;
}

/** Shells, sleeves and a load's minus are on the box's metal unless the kind says that they are not. */
function addChassis(draft: FragmentDraft, station: Station, unit: Unit, kind: UnitKind) {
  if (kind.isolated === 'all') return;
  const isolated = new Set(kind.isolated ?? []);
  const minus = new Set(kind.elements.flatMap((e) => (e.type === 'load' ? [e.minus] : [])));
  const chassis = draft.node(`${unit.id}.chassis`);
  for (const port of kind.ports) {
    for (const contact of station.connectors[port.connector]?.contacts ?? []) {
      const ref = `${port.id}.${contact.id}`;
      const joined = port.class === 'dc' ? minus.has(ref) : contact.role === 'return' || port.class === 'earth';
      if (!joined || isolated.has(ref)) continue;
      const origin = { type: 'chassis', unit: unit.id, contact: ref } as const;
      draft.parts.push({
        kind: 'resistor',
        a: draft.node(`${unit.id}.${ref}`),
        b: chassis,
        ohms: chassisOhms,
        gate: [],
        origin,
      });
    }
  }
}
