import { ownFigureProblem } from '../../own-figure.ts';
import { findUnit } from '../../parts.ts';
import { plugOf } from '../../plug-of.ts';
import type { Cable, CableEnd, Station, Unit } from '../../schema/schema.ts';
import type { Pieces } from '../pieces.ts';
import type { Problem } from '../problem.ts';
import { checkWholeKind } from './check-kind.ts';
import type { Connectors } from './names-in.ts';
import { type ReportProblem, reportTo, reportTwins } from './report-to.ts';

/**
 * Every name in a document that points at nothing, every id given twice, every kind that could not be used and every
 * own figure beyond its limits, each with its place. What could not be read at all is not told again.
 */
export function findBrokenReferences(pieces: Pieces): Problem[] {
  const problems: Problem[] = [];
  const tell = reportTo(problems);
  // Places are those of the file, where what could not be read still counts.
  const report: ReportProblem = ([list, i, ...path], message) =>
    tell([list as string, typeof i === 'number' ? pieces.indexOf(list as never, i) : (i as string), ...path], message);
  const { station, has } = pieces;
  for (const list of ['units', 'cables', 'hookups', 'marks'] as const) reportTwins(station[list] ?? [], list, report);
  const connectors = knownConnectors(pieces);
  for (const [name, kind] of Object.entries(station.kinds))
    checkWholeKind(kind, connectors, (path, message) => tell(['kinds', name, ...path], message));
  station.units.forEach((unit, i) => {
    if (!has('kinds', unit.kind)) report(['units', i, 'kind'], `The document has no unit kind “${unit.kind}”.`);
    checkOwnFigures(station, unit, i, report);
  });
  station.cables.forEach((cable, i) => {
    checkCable(pieces, cable, i, report);
  });
  station.couplings?.forEach((coupling, i) => {
    for (const end of ['a', 'b'] as const) {
      const { unit, port } = coupling[end];
      const kind = kindNamed(station, findUnit(station, unit));
      if (kind ? kind.ports.find((p) => p.id === port)?.class !== 'rf' : !has('units', unit))
        report(['couplings', i, end], `There is no RF port “${unit} · ${port}”.`);
    }
  });
  return problems;
}

const kindNamed = ({ kinds }: Station, unit: Unit | undefined) =>
  unit && Object.hasOwn(kinds, unit.kind) ? kinds[unit.kind] : undefined;

/** Connectors that could not be read are there, without anything being known of them. */
function knownConnectors({ station, has }: Pieces): Connectors {
  const named = Object.values(station.kinds).flatMap((kind) => kind.ports.map((port) => port.connector));
  const there = named.filter((id) => has('connectors', id));
  return { ...Object.fromEntries(there.map((id) => [id, undefined])), ...station.connectors };
}

function checkOwnFigures(station: Station, unit: Unit, i: number, report: ReportProblem) {
  const kind = kindNamed(station, unit);
  for (const [key, value] of Object.entries(unit.overrides ?? {})) {
    const problem = kind && ownFigureProblem(kind, key, value);
    if (problem) report(['units', i, 'overrides', key], problem);
  }
}

function checkCable(pieces: Pieces, cable: Cable, i: number, report: ReportProblem) {
  const { station, has } = pieces;
  if (!has('cableKinds', cable.kind)) report(['cables', i, 'kind'], `The document has no cable kind “${cable.kind}”.`);
  for (const end of ['a', 'b'] as const) checkEnd(pieces, cable, end, i, report);
  if (cable.a.unit === cable.b.unit && cable.a.port === cable.b.port) {
    report(['cables', i, 'b'], `Cable ${cable.number} goes from ${cable.a.unit} · ${cable.a.port} to that same port.`);
  }
  cable.hookups?.forEach((hookup, k) => {
    if (!has('hookups', hookup)) report(['cables', i, 'hookups', k], `There is no hook-up “${hookup}”.`);
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

function checkEnd({ station, has }: Pieces, cable: Cable, end: CableEnd, i: number, report: ReportProblem) {
  const { unit: unitId, port } = cable[end];
  const unit = findUnit(station, unitId);
  if (!has('units', unitId)) report(['cables', i, end, 'unit'], `There is no unit “${unitId}”.`);
  const kind = kindNamed(station, unit);
  if (unit && kind && !kind.ports.some((p) => p.id === port)) {
    report(
      ['cables', i, end, 'port'],
      `The ${unit.name} has no port “${port}”; it has ${kind.ports.map((p) => p.id).join(', ')}.`,
    );
  }
  const plug = cable.plugs?.[end];
  if (plug && !has('connectors', plug)) report(['cables', i, 'plugs', end], `The document has no connector “${plug}”.`);
}
