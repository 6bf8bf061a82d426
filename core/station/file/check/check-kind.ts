import type { Connector } from '../../schema/connector.ts';
import { type UnitKind, unitKindSchema } from '../../schema/unit-kind.ts';
import type { Problem } from '../problem.ts';
import { problemsOfSchema, shorten } from '../schema-problems.ts';
import { checkConditions } from './check-conditions.ts';
import { checkFigures } from './check-figures.ts';
import { checkElements, checkFeels, checkIds, checkPorts } from './check-names.ts';
import { type Connectors, namesIn } from './names-in.ts';
import { type ReportProblem, reportTo } from './report-to.ts';

/**
 * Everything that keeps a unit kind from being used, in sentences, each with its place in the kind
 * (`ports[1].connector`): what the schema forbids, and if there is nothing of that, names that point at nothing, ids
 * given twice and figures that contradict each other. An empty list: it can be used.
 */
export function checkKind(kind: unknown, connectors: Readonly<Record<string, Connector>>): Problem[] {
  const parsed = unitKindSchema.safeParse(kind);
  if (!parsed.success) return shorten(withNames(problemsOfSchema(parsed.error, kind), kind));
  const problems: Problem[] = [];
  checkWholeKind(parsed.data, connectors, reportTo(problems));
  return shorten(problems);
}

/** The same for a kind that the schema allows, as the editor and every station file that carries one are judged. */
export function checkWholeKind(kind: UnitKind, connectors: Connectors, report: ReportProblem): void {
  const names = namesIn(kind, connectors);
  if (kind.name.trim() === '') report(['name'], unnamed.message);
  if (kind.source.trim() === '') report(['source'], 'It has to say where its figures are from.');
  checkIds(kind, report);
  checkPorts(kind, connectors, names, report);
  checkElements(kind, names, report);
  checkConditions(kind, names, report);
  checkFeels(kind, names, report);
  checkFigures(kind, report);
}

/** What a kind that has only been begun lacks, in words of its own. */
function withNames(problems: Problem[], kind: unknown): Problem[] {
  const { name, ports } = (kind ?? {}) as { name?: unknown; ports?: unknown };
  const isUnnamed = typeof name === 'string' && name.trim() === '';
  const isBare = Array.isArray(ports) && ports.length === 0;
  return [
    ...(isUnnamed ? [unnamed] : []),
    ...problems.map((p) => (isBare && p.place === 'ports' ? { ...p, message: 'A unit kind needs a port.' } : p)),
  ];
}

const unnamed: Problem = { place: 'name', message: 'A unit kind needs a name.' };
