import { findUnit } from '../parts.ts';
import { rememberEach } from '../remember.ts';
import type { Connector } from '../schema/connector.ts';
import type { Cable, CableEnd, Station } from '../schema/schema.ts';
import type { UnitElement, UnitKind } from '../schema/unit-kind.ts';
import { type Problem, placeOf } from './problem.ts';

/** Every name in the document that points at nothing, and every id given twice, with its place. */
export function findBrokenReferences(station: Station): Problem[] {
  const problems: Problem[] = [];
  const report = (path: readonly PropertyKey[], message: string) => problems.push({ place: placeOf(path), message });
  for (const list of ['units', 'cables', 'hookups', 'marks'] as const) reportTwins(station[list] ?? [], list, report);
  for (const [name, kind] of Object.entries(station.kinds)) {
    checkKindReferences(kind, station.connectors, (path, message) => report(['kinds', name, ...path], message));
  }
  station.units.forEach((unit, i) => {
    if (!station.kinds[unit.kind]) report(['units', i, 'kind'], `The document has no unit kind “${unit.kind}”.`);
  });
  station.cables.forEach((cable, i) => {
    checkCable(station, cable, i, report);
  });
  station.couplings?.forEach((coupling, i) => {
    for (const end of ['a', 'b'] as const) {
      const { unit, port } = coupling[end];
      const kind = station.kinds[findUnit(station, unit)?.kind ?? ''];
      if (kind?.ports.find((p) => p.id === port)?.class !== 'rf')
        report(['couplings', i, end], `There is no RF port “${unit} · ${port}”.`);
    }
  });
  station.hookups.forEach((hookup, i) => {
    for (const unit of Object.keys(hookup.settings ?? {})) {
      if (!station.units.some((u) => u.id === unit))
        report(['hookups', i, 'settings', unit], `There is no unit “${unit}”.`);
    }
  });
  return problems;
}

export type Report = (path: readonly PropertyKey[], message: string) => void;

/** Reports every id that an earlier item of the list has already. */
export function reportTwins(items: readonly { id: string }[], list: string, report: Report) {
  const first = new Map<string, number>();
  items.forEach((item, i) => {
    const twin = first.get(item.id);
    if (twin === undefined) first.set(item.id, i);
    else report([list, i, 'id'], `The id “${item.id}” is already taken by ${list}[${twin}].`);
  });
}

/**
 * The names in a unit kind that point at nothing and the ids given twice: ports, connectors, contacts. The paths begin
 * at the kind.
 */
export function checkKindReferences(
  kind: UnitKind,
  connectors: Readonly<Record<string, Connector>>,
  report: Report,
): void {
  reportTwins(kind.ports, 'ports', report);
  kind.ports.forEach((port, i) => {
    if (!connectors[port.connector]) report(['ports', i, 'connector'], `There is no connector “${port.connector}”.`);
  });
  const contacts = contactsOf(kind, connectors);
  kind.elements.forEach((element, i) => {
    for (const [field, ref] of contactRefsOf(element)) {
      if (ref !== 'chassis' && !ref.startsWith('@') && !contacts.has(ref))
        report(['elements', i, field], `The kind has no contact “${ref}”.`);
    }
    const heard = element.type === 'audioSource' ? element.follows?.load : undefined;
    if (heard !== undefined && !kind.elements.some((e) => e.type === 'audioLoad' && e.id === heard))
      report(['elements', i, 'follows', 'load'], `The kind has no audio input “${heard}”.`);
    for (const [field, port] of portRefsOf(element)) {
      if (!kind.ports.some((p) => p.id === port)) report(['elements', i, field], `The kind has no port “${port}”.`);
    }
  });
}

/** `port.contact` of every contact that a kind's ports have. */
export const contactsOf = (kind: UnitKind, connectors: Readonly<Record<string, Connector>>): ReadonlySet<string> =>
  new Set(kind.ports.flatMap((p) => (connectors[p.connector]?.contacts ?? []).map((c) => `${p.id}.${c.id}`)));

/** The fields of an element that name contacts. */
function contactRefsOf(element: UnitElement): [string, string][] {
  const fields = ['from', 'to', 'plus', 'minus', 'outPlus', 'outMinus', 'anode', 'cathode', 'contact', 'reference'];
  return Object.entries(element).filter(
    (e): e is [string, string] => fields.includes(e[0]) && typeof e[1] === 'string',
  );
}

/** The fields of an element that name ports. */
function portRefsOf(element: UnitElement): [string, string][] {
  if (element.type === 'rfPath' || element.type === 'matcher')
    return [
      ['a', element.a],
      ['b', element.b],
    ];
  return element.type === 'rfSource' || element.type === 'rfLoad' ? [['port', element.port]] : [];
}

function checkCable(station: Station, cable: Cable, i: number, report: Report) {
  if (!station.cableKinds[cable.kind]) report(['cables', i, 'kind'], `The document has no cable kind “${cable.kind}”.`);
  for (const end of ['a', 'b'] as const) checkEnd(station, cable, end, i, report);
  if (cable.a.unit === cable.b.unit && cable.a.port === cable.b.port) {
    report(['cables', i, 'b'], `Cable ${cable.number} goes from ${cable.a.unit} · ${cable.a.port} to that same port.`);
  }
  cable.hookups?.forEach((hookup, k) => {
    if (!station.hookups.some((h) => h.id === hookup))
      report(['cables', i, 'hookups', k], `There is no hook-up “${hookup}”.`);
  });
  cable.wiring?.forEach((row, k) => {
    for (const end of ['a', 'b'] as const) {
      const plug = plugOf(station, cable, end);
      if (plug && !plug.contacts.some((c) => c.id === row[end])) {
        report(['cables', i, 'wiring', k, end], `The ${plug.name} has no contact “${row[end]}”.`);
      }
    }
  });
}

function checkEnd(station: Station, cable: Cable, end: CableEnd, i: number, report: Report) {
  const { unit: unitId, port } = cable[end];
  const unit = findUnit(station, unitId);
  if (!unit) report(['cables', i, end, 'unit'], `There is no unit “${unitId}”.`);
  const kind = unit && station.kinds[unit.kind];
  if (kind && !kind.ports.some((p) => p.id === port)) {
    report(
      ['cables', i, end, 'port'],
      `The ${unit.name} has no port “${port}”; it has ${kind.ports.map((p) => p.id).join(', ')}.`,
    );
  }
  const plug = cable.plugs?.[end];
  if (plug && !station.connectors[plug])
    report(['cables', i, 'plugs', end], `The document has no connector “${plug}”.`);
}

/** The plug on one end of a cable: its own, its kind's, or the first mate of the port. Undefined where the port isn't known. */
export function plugOf(station: Station, cable: Cable, end: CableEnd): (Connector & { id: string }) | undefined {
  const id = cable.plugs?.[end] ?? station.cableKinds[cable.kind]?.plugs?.[end] ?? mateOfPort(station, cable, end);
  const connector = id === undefined ? undefined : station.connectors[id];
  return connector && id !== undefined ? withId(connector, id) : undefined;
}

const withId = rememberEach((connector: Connector, id: string) => ({ ...connector, id }));

function mateOfPort(station: Station, cable: Cable, end: CableEnd): string | undefined {
  const unit = findUnit(station, cable[end].unit);
  const port = unit && station.kinds[unit.kind]?.ports.find((p) => p.id === cable[end].port);
  return port && station.connectors[port.connector]?.mates[0];
}
