import type { Connector } from '../schema/connector.ts';
import { type UnitKind, unitKindSchema } from '../schema/unit-kind.ts';
import { checkConditions } from './check-conditions.ts';
import { checkFigures } from './check-figures.ts';
import { type Problem, placeOf } from './problem.ts';
import { checkKindReferences, contactsOf, type Report, reportTwins } from './references.ts';
import { problemsOfSchema, shorten } from './schema-problems.ts';

/**
 * Everything that keeps a unit kind from being used, in sentences, each with its place in the kind
 * (`ports[1].connector`): what the schema forbids, and if there is nothing of that, names that point at nothing, ids
 * given twice and figures that contradict each other. An empty list: it can be used.
 */
export function checkKind(kind: unknown, connectors: Readonly<Record<string, Connector>>): Problem[] {
  const parsed = unitKindSchema.safeParse(kind);
  if (!parsed.success) return shorten(withNames(problemsOfSchema(parsed.error, kind), kind));
  const problems: Problem[] = [];
  const report: Report = (path, message) => problems.push({ place: placeOf(path), message });
  const whole = parsed.data;
  if (whole.name.trim() === '') problems.push(unnamed);
  if (whole.source.trim() === '') report(['source'], 'It has to say where its figures are from.');
  checkKindReferences(whole, connectors, report);
  checkPorts(whole, connectors, report);
  checkIds(whole, report);
  checkConditions(whole, report);
  checkFeels(whole, contactsOf(whole, connectors), report);
  checkFigures(whole, report);
  return shorten(problems);
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

function checkIds(kind: UnitKind, report: Report) {
  reportTwins(kind.elements, 'elements', report);
  reportTwins(kind.actors ?? [], 'actors', report);
  reportTwins(kind.settings ?? [], 'settings', report);
  kind.settings?.forEach((setting, i) => {
    const within: Report = ([, ...path], message) => report(['settings', i, 'options', ...path], message);
    reportTwins(setting.options, 'options', within);
    if (!setting.options.some((o) => o.id === setting.initial))
      report(['settings', i, 'initial'], `The setting has no position “${setting.initial}”.`);
  });
}

function checkPorts(kind: UnitKind, connectors: Readonly<Record<string, Connector>>, report: Report) {
  kind.ports.forEach((port, i) => {
    const contacts = connectors[port.connector]?.contacts ?? [];
    for (const contact of Object.keys(port.limits ?? {})) {
      if (!contacts.some((c) => c.id === contact))
        report(['ports', i, 'limits', contact], `Its connector has no contact “${contact}”.`);
    }
  });
  const all = contactsOf(kind, connectors);
  if (!Array.isArray(kind.isolated)) return;
  kind.isolated.forEach((ref, i) => {
    if (!all.has(ref)) report(['isolated', i], `The kind has no contact “${ref}”.`);
  });
}

/** What actors feel has to be there: contacts, elements, ports, other actors. */
function checkFeels(kind: UnitKind, contacts: ReadonlySet<string>, report: Report) {
  const isContact = (ref: string) => ref === 'chassis' || ref.startsWith('@') || contacts.has(ref);
  kind.actors?.forEach((actor, i) => {
    const many = Array.isArray(actor.feels);
    [actor.feels].flat().forEach((feel, k) => {
      const at = (field: string) => (many ? ['actors', i, 'feels', k, field] : ['actors', i, 'feels', field]);
      if (feel.type === 'voltageBelow' || feel.type === 'voltageAbove') {
        for (const field of ['contact', 'reference'] as const) {
          const ref = feel[field];
          if (ref !== undefined && !isContact(ref)) report(at(field), `The kind has no contact “${ref}”.`);
        }
      }
      if (feel.type === 'currentAbove' && !kind.elements.some((e) => e.id === feel.element))
        report(at('element'), `There is nothing “${feel.element}” inside.`);
      if (feel.type === 'rfAbove' && !kind.ports.some((p) => p.id === feel.port))
        report(at('port'), `The kind has no port “${feel.port}”.`);
      if (feel.type !== 'actor') return;
      if (feel.actor === actor.id) report(at('actor'), `“${actor.id}” can’t follow itself.`);
      else if (!kind.actors?.some((a) => a.id === feel.actor))
        report(at('actor'), `Nothing called “${feel.actor}” switches in it.`);
    });
  });
}
