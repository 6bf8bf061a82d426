import { formatHertz, formatPercent } from '../../quantity/format.ts';
import { asDrawn, findUnit } from '../../station/parts.ts';
import type { Hookup, Plan, Station } from '../../station/schema/schema.ts';
import { type ChangeLine, fieldWords, isSame, pairById, type Wording } from './change-line.ts';
import { refName } from './ref-name.ts';
import { settingChanges } from './unit-lines.ts';

/** The station as a whole: title, notes, plan, limits, hook-ups, couplings, what is accepted, readings. */
export function stationLines(before: Station, after: Station): ChangeLine[] {
  const everywhere = (words: string): ChangeLine => ({ words, at: [] });
  return [
    ...fieldWords(words, before, after).map((text) => everywhere(`Station: ${text}`)),
    ...fieldWords(plan, before.plan, after.plan).map((text) => everywhere(`Plan: ${text}`)),
    ...fieldWords(limits, before.settings, after.settings).map((text) => everywhere(`Limits: ${text}`)),
    ...hookupLines(before, after),
    ...couplingLines(before, after),
    ...acceptedLines(before, after),
    ...(isSame(before.readings, after.readings) ? [] : [everywhere('The readings change')]),
  ];
}

const words: Wording<Pick<Station, 'title' | 'notes'>> = {
  title: ['title', (title) => `“${title}”`],
  notes: ['notes', (notes) => `“${notes}”`],
};

const plan: Wording<Plan> = {
  frequencyHz: ['frequency', formatHertz],
  mode: ['mode', (mode) => mode],
  speedWpm: ['speed', (speed) => `${speed} WPM`],
  duty: ['RF on while sending', formatPercent],
  sendShare: ['time spent sending', formatPercent],
  hoursPerDay: ['hours a day', String],
};

const limits: Wording<Station['settings']> = {
  units: ['lengths in', (units) => (units === 'feet' ? 'feet' : 'metres')],
  maxDrop: ['voltage drop up to', formatPercent],
  metresPerUnit: ['scale of the drawing', String],
  maxScreenAmps: ['current in a screen up to', (amps) => `${amps} A`],
  ambientCelsius: ['air around the leads', (degrees) => `${degrees} °C`],
  bundled: ['loaded conductors in a bundle', String],
  cableAllowance: ['cable to buy beyond what is cut', formatPercent],
};

function hookupLines(before: Station, after: Station): ChangeLine[] {
  const { added, removed, changed } = pairById(before.hookups, after.hookups);
  const unnamed = before.hookups.length === 0 ? ` in place of “${asDrawn.name}”` : '';
  return [
    ...removed.map(({ name }) => ({ words: `Hook-up “${name}” goes`, at: [] })),
    ...changed.flatMap(({ was, is }) => hookupChanges(after, was, is)),
    ...added.map(({ name }, i) => ({ words: `New hook-up “${name}”${i === 0 ? unnamed : ''}`, at: [] })),
  ];
}

function hookupChanges(after: Station, was: Hookup, is: Hookup): ChangeLine[] {
  const units = new Set([...Object.keys(was.settings ?? {}), ...Object.keys(is.settings ?? {})]);
  const settings = [...units].flatMap((id): ChangeLine[] => {
    const unit = findUnit(after, id);
    const kind = after.kinds[unit?.kind ?? ''];
    const changes = settingChanges(kind, was.settings?.[id], is.settings?.[id], unit?.settings);
    return changes.map((text) => ({ words: `Hook-up “${is.name}”, ${unit?.name ?? id}: ${text}`, at: [{ unit: id }] }));
  });
  const renamed = was.name === is.name ? [] : [{ words: `Hook-up “${was.name}” → “${is.name}”`, at: [] }];
  const lines = [...renamed, ...settings];
  return lines.length > 0 ? lines : [{ words: `Hook-up “${is.name}” changes`, at: [] }];
}

function couplingLines(before: Station, after: Station): ChangeLine[] {
  const name = (station: Station, { a, b }: NonNullable<Station['couplings']>[number]) =>
    `${refName(station, a)} to ${refName(station, b)}`;
  const [old, fresh] = [before.couplings ?? [], after.couplings ?? []];
  const missingIn = (list: typeof old) => (coupling: (typeof old)[number]) => !list.some((c) => isSame(c, coupling));
  return [
    ...old.filter(missingIn(fresh)).map((c) => ({ words: `Coupling ${name(before, c)} goes`, at: [c.a, c.b] })),
    ...fresh
      .filter(missingIn(old))
      .map((c) => ({ words: `Coupling ${name(after, c)}: ${c.lossDb} dB`, at: [c.a, c.b] })),
  ];
}

function acceptedLines(before: Station, after: Station): ChangeLine[] {
  const missingIn = (list: Station['accepted']) => (one: Station['accepted'][number]) =>
    !list.some((other) => isSame(one, other));
  return [
    ...after.accepted.filter(missingIn(before.accepted)).map((a) => ({ words: `Accepted: “${a.reason}”`, at: [] })),
    ...before.accepted
      .filter((a) => !after.accepted.some((other) => other.finding === a.finding))
      .map((a) => ({ words: `No longer accepted: “${a.reason}”`, at: [] })),
  ];
}
