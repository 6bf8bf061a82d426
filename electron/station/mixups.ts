import { counted, type MixUp, type MixUpStudy, type Station, studyMixUps, writeCsv } from '../../core/index.ts';
import { asJson, type Command, type Options, surveying } from './command.ts';

export const mixups: Command = {
  summary: 'what a hand could plug wrong, and what would come of it: the worst and the easiest first',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, options, progress }) {
    progress?.(surveying);
    const study = studyMixUps(station, (done, of) => progress?.('mix-ups tried', done, of));
    const { hookup } = options;
    const mixUps = study.mixUps.filter(({ harms: [worst] }) => !hookup || worst.hookups.includes(hookup.id));
    return { text: writeMixUps(station, { ...study, mixUps }, options.form), status: 0 };
  },
};

/** A study in one of the forms that the command has. */
function writeMixUps(station: Station, study: MixUpStudy, form: Options['form']): string {
  const { tried, harmless, mixUps } = study;
  if (form === 'json') return asJson({ tried, harmless, mixups: mixUps.map(plain) });
  if (form === 'csv') return csvOf(mixUps);
  return `${station.title}\n\n${textOf(study)}`;
}

const plain = ({ act, alike, severity, harms, strikes, ease }: MixUp) => ({
  id: act.id,
  act: { kind: act.kind, cables: act.cables, at: act.at, words: act.words },
  severity,
  harms: harms.map(({ id, rule, severity, message, causedBy }) => ({ id, rule, severity, message, causedBy })),
  strikes,
  ease: ease.words,
  alike: alike.map(({ id, words }) => ({ id, words })),
});

function textOf({ tried, harmless, mixUps }: MixUpStudy): string {
  const rows = mixUps.map(({ act, alike, severity, harms, strikes, ease }) => {
    const [worst, ...others] = harms.filter((f) => f.severity !== 'note' && f.causedBy === undefined);
    const lines = [
      `${severity.toUpperCase()}  ${act.words}`,
      `  ${(worst ?? harms[0]).message}`,
      `  When: ${strikes}${others.length > 0 ? `, and ${counted(others.length, 'thing', 'things')} more` : ''}`,
      ...(ease.words.length > 0 ? [`  Easy: ${ease.words.join('; ')}`] : []),
      ...(alike.length > 0 ? [`  Alike: ${alike.map((a) => a.words).join('; ')}`] : []),
    ];
    return `${lines.join('\n')}\n`;
  });
  const rest = `${counted(tried, 'thing', 'things')} that a hand could do wrong tried one at a time; ${harmless} of them do no harm.`;
  return `${rows.join('\n')}\n${rest}\nAn estimate from the figures entered; two mistakes together are not looked at.\n`;
}

const csvOf = (mixUps: readonly MixUp[]): string =>
  writeCsv(
    ['Mix-up', 'Severity', 'What happens', 'When', 'Why it is easy', 'Alike'],
    mixUps.map(({ act, alike, severity, harms: [worst], strikes, ease }) => [
      act.words,
      severity,
      worst.message,
      strikes,
      ease.words.join('; '),
      `${alike.length}`,
    ]),
  );
