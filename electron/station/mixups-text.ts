import { counted, type Measure, type MixUp, type MixUpStudy, precautionFor, type Scheme } from '../../core/index.ts';

/** A study and its scheme as it is read. */
export function mixUpsText({ tried, harmless, prevented, mixUps }: MixUpStudy, scheme: Scheme): string {
  const told =
    prevented > 0 ? ` ${prevented} more are told in time by the rings that are there, and were not tried.` : '';
  return `${[
    ...mixUps.map(rowOf),
    `${counted(tried, 'thing', 'things')} that a hand could do wrong tried one at a time; ${harmless} of them do no harm.${told}`,
    'An estimate from the figures entered; two mistakes together are not looked at.',
    '',
    ...schemeLines(scheme),
  ].join('\n')}\n`;
}

function rowOf({ act, alike, severity, harms, strikes, ease }: MixUp): string {
  const [worst, ...others] = harms.filter((f) => f.severity !== 'note' && f.causedBy === undefined);
  const lines = [
    `${severity.toUpperCase()}  ${act.words}`,
    `  ${(worst ?? harms[0]).message}`,
    `  When: ${strikes}${others.length > 0 ? `, and ${counted(others.length, 'thing', 'things')} more` : ''}`,
    ...(ease.words.length > 0 ? [`  Easy: ${ease.words.join('; ')}`] : []),
    ...(alike.length > 0 ? [`  Alike: ${alike.map((a) => a.words).join('; ')}`] : []),
  ];
  return `${lines.join('\n')}\n`;
}

function schemeLines({ measures, exact, left }: Scheme): string[] {
  if (measures.length === 0 && left.length === 0)
    return ['Nothing is left that injures or destroys: no ring is missing.'];
  return [...ringLines(measures, exact), ...leftLines(left, measures.length > 0)];
}

function ringLines(measures: readonly Measure[], exact: boolean): string[] {
  if (measures.length === 0) return [];
  const colours = new Set(measures.flatMap(({ colour }) => colour ?? [])).size;
  const jacks = measures.reduce((sum, { colour, ports }) => sum + (colour ? ports.length : 0), 0);
  const least = exact ? 'fewer would not do' : 'fewer may do: the search was cut short';
  return [
    'Rings that tell a hand of what injures or destroys:',
    ...measures.map(({ words }) => `  ${words}`),
    `${counted(colours, 'colour', 'colours')} at ${counted(jacks, 'jack', 'jacks')}; ${least}.`,
    'A ring tells where a plug belongs and keeps none out: where a mix-up could hurt somebody, a connector that does not fit is better.',
  ];
}

function leftLines(left: readonly MixUp[], isAfterRings: boolean): string[] {
  if (left.length === 0) return ['After that, nothing is left of it.'];
  return [
    isAfterRings ? 'What rings do not prevent:' : 'What injures or destroys, and no ring prevents:',
    ...left.map((mixUp) => `  ${mixUp.act.words}. ${precautionFor(mixUp)}`),
  ];
}
