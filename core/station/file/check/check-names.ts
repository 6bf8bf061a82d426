import type { Feel, UnitElement, UnitKind } from '../../schema/unit-kind.ts';
import type { Connectors, KindNames } from './names-in.ts';
import { type ReportProblem, reportTwins } from './report-to.ts';

/** Reports ids given twice in a kind, and settings that begin at a position that they have not. */
export function checkIds(kind: UnitKind, report: ReportProblem) {
  reportTwins(kind.ports, 'ports', report);
  reportTwins(kind.elements, 'elements', report);
  reportTwins(kind.actors ?? [], 'actors', report);
  reportTwins(kind.settings ?? [], 'settings', report);
  kind.settings?.forEach((setting, i) => {
    const within: ReportProblem = ([, ...path], message) => report(['settings', i, 'options', ...path], message);
    reportTwins(setting.options, 'options', within);
    if (!setting.options.some((o) => o.id === setting.initial))
      report(['settings', i, 'initial'], `The setting has no position “${setting.initial}”.`);
  });
}

/** Reports ports whose connector is not there or has not the contacts that they limit. */
export function checkPorts(
  kind: UnitKind,
  connectors: Connectors,
  { isPortContact }: KindNames,
  report: ReportProblem,
) {
  kind.ports.forEach((port, i) => {
    if (!Object.hasOwn(connectors, port.connector))
      report(['ports', i, 'connector'], `There is no connector “${port.connector}”.`);
    for (const contact of Object.keys(port.limits ?? {})) {
      if (!isPortContact(`${port.id}.${contact}`))
        report(['ports', i, 'limits', contact], `Its connector has no contact “${contact}”.`);
    }
  });
  if (!Array.isArray(kind.isolated)) return;
  kind.isolated.forEach((ref, i) => {
    if (!isPortContact(ref)) report(['isolated', i], `The kind has no contact “${ref}”.`);
  });
}

/** Reports elements that name contacts, ports or audio inputs that are not there. */
export function checkElements(kind: UnitKind, names: KindNames, report: ReportProblem) {
  kind.elements.forEach((element, i) => {
    for (const [field, ref] of contactRefsOf(element)) {
      if (!names.isContact(ref)) report(['elements', i, field], `The kind has no contact “${ref}”.`);
    }
    const heard = element.type === 'audioSource' ? element.follows?.load : undefined;
    if (heard !== undefined && !names.audioLoads.has(heard))
      report(['elements', i, 'follows', 'load'], `The kind has no audio input “${heard}”.`);
    for (const [field, port] of portRefsOf(element)) {
      if (!names.ports.has(port)) report(['elements', i, field], `The kind has no port “${port}”.`);
    }
  });
}

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

/** Reports actors that feel what is not there: contacts, elements, ports, other actors. */
export function checkFeels(kind: UnitKind, names: KindNames, report: ReportProblem) {
  kind.actors?.forEach((actor, i) => {
    const many = Array.isArray(actor.feels);
    [actor.feels].flat().forEach((feel, k) => {
      const wrong = feelProblem(feel, actor.id, names);
      if (wrong) report(['actors', i, 'feels', ...(many ? [k] : []), wrong.field], wrong.message);
    });
  });
}

function feelProblem(feel: Feel, own: string, names: KindNames): { field: string; message: string } | null {
  switch (feel.type) {
    case 'operator':
      return null;
    case 'voltageAbove':
    case 'voltageBelow': {
      const field = (['contact', 'reference'] as const).find((f) => !names.isContact(feel[f] ?? 'chassis'));
      return field ? { field, message: `The kind has no contact “${feel[field]}”.` } : null;
    }
    case 'currentAbove':
      return names.elements.has(feel.element)
        ? null
        : { field: 'element', message: `There is nothing “${feel.element}” inside.` };
    case 'rfAbove':
      return names.ports.has(feel.port) ? null : { field: 'port', message: `The kind has no port “${feel.port}”.` };
    case 'actor':
      if (feel.actor === own) return { field: 'actor', message: `“${own}” can’t follow itself.` };
      return names.actors.has(feel.actor)
        ? null
        : { field: 'actor', message: `Nothing called “${feel.actor}” switches in it.` };
  }
}
