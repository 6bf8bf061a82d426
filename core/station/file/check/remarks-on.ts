import { hasPlaceOf, hasPort, hasPosition } from '../../named.ts';
import { limitOfOwnFigure } from '../../own-figure.ts';
import { findUnit } from '../../parts.ts';
import type { Station } from '../../schema/schema.ts';
import type { UnitKind } from '../../schema/unit-kind.ts';
import type { Problem } from '../problem.ts';
import { type ReportProblem, reportTo } from './report-to.ts';

/**
 * What in a document names nothing and so has no effect, each with its place: own figures, settings, sides, rings,
 * acceptances.
 * It does no harm, and keeps a file from being opened no more than a remark would; but who wrote it meant something.
 */
export function remarksOn(station: Station): Problem[] {
  const remarks: Problem[] = [];
  const report = reportTo(remarks);
  const kindOfUnit = (id: string) => station.kinds[findUnit(station, id)?.kind ?? ''];
  station.units.forEach((unit, i) => {
    const kind = kindOfUnit(unit.id);
    if (!kind) return;
    for (const key of Object.keys(unit.overrides ?? {})) {
      if (!limitOfOwnFigure(kind, key))
        report(['units', i, 'overrides', key], `${unit.name} has no figure “${key}”: this changes nothing.`);
    }
    for (const field of ['sides', 'rings'] as const) {
      for (const port of Object.keys(unit[field] ?? {})) {
        if (!hasPort(kind, port))
          report(['units', i, field, port], `${unit.name} has no port “${port}”: this changes nothing.`);
      }
    }
    remarkSettings(kind, unit.name, unit.settings, ['units', i, 'settings'], report);
  });
  station.hookups.forEach((hookup, i) => {
    for (const [id, settings] of Object.entries(hookup.settings ?? {})) {
      const kind = kindOfUnit(id);
      const path = ['hookups', i, 'settings', id];
      if (!kind) report(path, `There is no unit “${id}”: this changes nothing.`);
      else remarkSettings(kind, findUnit(station, id)?.name ?? id, settings, path, report);
    }
  });
  station.accepted.forEach(({ finding }, i) => {
    if (!hasPlaceOf(station, finding))
      report(['accepted', i, 'finding'], `There is no such place: “${finding}” accepts nothing.`);
  });
  return remarks;
}

function remarkSettings(
  kind: UnitKind,
  name: string,
  settings: Readonly<Record<string, string>> = {},
  path: readonly PropertyKey[],
  report: ReportProblem,
) {
  for (const [id, position] of Object.entries(settings)) {
    const setting = kind.settings?.find((s) => s.id === id);
    if (!setting) report([...path, id], `${name} has no setting “${id}”: this changes nothing.`);
    else if (!hasPosition(kind, id, position)) {
      const known = setting.options.map((o) => o.id).join(', ');
      report([...path, id], `The setting “${id}” of ${name} has no position “${position}”; it has ${known}.`);
    }
  }
}
