import { asDrawn, cablesIn, kindOf, settingsIn } from '../station/parts.ts';
import type { Hookup, Station, Unit } from '../station/schema/schema.ts';
import type { Condition, UnitKind } from '../station/schema/unit-kind.ts';
import { addActors } from './add-actors.ts';
import { addCable } from './add-cable.ts';
import { addElement } from './add-element.ts';
import { type Circuit, type Gate, never } from './circuit.ts';
import { CircuitDraft, type GateFor } from './draft.ts';

/** Metal to metal inside a box, in ohms; common practice for a screwed chassis joint. */
const chassisOhms = 0.005;

/**
 * The station as it is plugged together in a hook-up: every contact a node, every conductor, joint, load and supply a
 * part between nodes, every actor with what it feels. The station has to be a valid one (`readStation`).
 */
export function buildCircuit(station: Station, hookup: Hookup = asDrawn): Circuit {
  const draft = new CircuitDraft();
  const units = station.units.map((unit) => ({
    unit,
    kind: kindOf(station, unit),
    settings: {} as Record<string, string>,
  }));
  for (const entry of units) entry.settings = settingsIn(entry.kind, entry.unit, hookup);
  // Actors get their numbers first: elements of any unit may name those of their own unit only, but power comes early.
  for (const { unit, kind } of units) nameActors(draft, unit, kind);
  for (const { unit, kind, settings } of units) {
    const gateFor: GateFor = (condition) => compileGate(draft, unit.id, settings, condition);
    const first = draft.parts.length;
    for (const element of kind.elements) addElement(draft, station, unit, kind, element, gateFor);
    addActors(draft, station, unit, kind, first, gateFor);
    addChassis(draft, station, unit, kind);
  }
  for (const cable of cablesIn(station, hookup)) addCable(draft, station, cable);
  const { nodes, nodeOf, parts, actors, actorOf } = draft;
  addCouplings(draft, station);
  const hertz = station.plan.frequencyHz;
  const rf = { hertz, ports: draft.rfPorts, edges: draft.rfEdges, sources: draft.rfSources, loads: draft.rfLoads };
  const signals = { sources: draft.sources, loads: draft.loads, data: draft.data };
  return { nodes, nodeOf, parts, actors, actorOf, rf, signals };
}

/** What one antenna sends reaches another; nobody would call that a selected path. */
function addCouplings(draft: CircuitDraft, station: Station) {
  for (const { a, b, lossDb } of station.couplings ?? []) {
    const [from, to] = [a, b].map(({ unit, port }) => draft.rfPort(`${unit}.${port}`));
    if (from === undefined || to === undefined) continue;
    const ways = { lossDb, isolationDb: lossDb, oneWay: false, saturationDbm: null, maxWatts: null };
    draft.rfEdges.push({ a: from, b: to, ...ways, gate: never, origin: { type: 'coupling' } });
  }
}

/** Numbers for a unit's power (where it has a load) and for each of its actors. */
function nameActors(draft: CircuitDraft, unit: Unit, kind: UnitKind) {
  const hasLoad = kind.elements.some((e) => e.type === 'load');
  const names = [...(hasLoad ? ['powered'] : []), ...(kind.actors ?? []).map((a) => a.id)];
  for (const name of names) draft.actorOf.set(`${unit.id}.${name}`, draft.actorOf.size);
}

function compileGate(
  draft: CircuitDraft,
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
function addChassis(draft: CircuitDraft, station: Station, unit: Unit, kind: UnitKind) {
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
