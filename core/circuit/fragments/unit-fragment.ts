import type { Hookup, Station, Unit } from '../../station/schema/schema.ts';
import type { Fragment } from '../circuit.ts';
import { addActors } from './add-actors.ts';
import { addElement } from './add-element.ts';
import { FragmentDraft } from './fragment-draft.ts';
import { UnitDraft } from './unit-draft.ts';

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
  const fragment = new FragmentDraft(`unit ${unit.id}`, from);
  const draft = new UnitDraft(fragment, station, hookup, unit);
  const { kind } = draft;
  // Actors get their numbers first: elements and other actors name them.
  nameActors(draft);
  for (const element of kind.elements) addElement(draft, element);
  addActors(draft);
  addChassis(draft);
  // Whatever has not been mentioned yet may have a plug in it.
  for (const port of kind.ports) {
    for (const { id } of station.connectors[port.connector]?.contacts ?? []) draft.node(`${port.id}.${id}`);
    if (port.class === 'rf') draft.rfPort(port.id);
  }
  return fragment;
}

/** Numbers for a unit's power (where it has a load) and for each of its actors. */
function nameActors(draft: UnitDraft) {
  const { elements, actors = [] } = draft.kind;
  if (elements.some((e) => e.type === 'load')) draft.nameActor('powered');
  for (const { id } of actors) draft.nameActor(id);
}

/** Shells, sleeves and a load's minus are on the box's metal unless the kind says that they are not. */
function addChassis(draft: UnitDraft) {
  const { station, unit, kind, fragment } = draft;
  if (kind.isolated === 'all') return;
  const isolated = new Set(kind.isolated ?? []);
  const minus = new Set(kind.elements.flatMap((e) => (e.type === 'load' ? [e.minus] : [])));
  const b = draft.node('chassis');
  for (const port of kind.ports) {
    for (const { id, role } of station.connectors[port.connector]?.contacts ?? []) {
      const contact = `${port.id}.${id}`;
      const joined = port.class === 'dc' ? minus.has(contact) : role === 'return' || port.class === 'earth';
      if (!joined || isolated.has(contact)) continue;
      const origin = { type: 'chassis', unit: unit.id, contact } as const;
      fragment.parts.push({ kind: 'resistor', a: draft.node(contact), b, ohms: chassisOhms, gate: [], origin });
    }
  }
}
