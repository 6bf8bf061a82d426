import {
  type Measure,
  type MixUp,
  precautionFor,
  type Scheme,
  schemeFor,
  studyMixUps,
  writeCsv,
} from '../../core/index.ts';
import { asJson, type Command, surveying } from './command.ts';
import { keepMixUps, makeFolder } from './keep-mix-ups.ts';
import { mixUpsText } from './mixups-text.ts';

export const mixups: Command = {
  summary:
    'what a hand could plug wrong, what would come of it, the worst and easiest first, and which rings prevent it',
  forms: ['json', 'csv'],
  options: ['hookup', 'write'],
  async run({ station, options, progress }) {
    if (options.write !== null) await makeFolder(options.write);
    progress?.(surveying);
    const study = studyMixUps(station, (done, of) => progress?.('mix-ups tried', done, of));
    // Rings are the station's, whatever hook-up is asked about.
    const scheme = schemeFor(study, station);
    const { hookup, form, write } = options;
    const mixUps = study.mixUps.filter(({ harms: [worst] }) => !hookup || worst.hookups.includes(hookup.id));
    const files = write === null ? null : await keepMixUps(write, station, mixUps);
    const { tried, harmless, prevented } = study;
    if (form === 'csv') return { text: csvOf(mixUps), status: 0 };
    if (form === 'json') {
      const mixups = mixUps.map((one, i) => ({ ...plainMixUp(one), ...(files && { file: files[i] }) }));
      return { text: asJson({ tried, harmless, prevented, mixups, scheme: plainScheme(scheme) }), status: 0 };
    }
    const kept = files ? `\n${files.length} station files, each drawn wrong in one way: ${write}\n` : '';
    return { text: `${station.title}\n\n${mixUpsText({ ...study, mixUps }, scheme)}${kept}`, status: 0 };
  },
};

const plainMixUp = ({ act, alike, severity, harms, strikes, ease }: MixUp) => ({
  id: act.id,
  act: { kind: act.kind, cables: act.cables, at: act.at, words: act.words },
  severity,
  harms: harms.map(({ id, rule, severity, message, causedBy }) => ({ id, rule, severity, message, causedBy })),
  strikes,
  ease: ease.words,
  alike: alike.map(({ id, words }) => ({ id, words })),
});

const plainScheme = ({ measures, exact, left }: Scheme) => ({
  exact,
  measures: measures.map(plainMeasure),
  left: left.map((mixUp) => ({ id: mixUp.act.id, words: mixUp.act.words, precaution: precautionFor(mixUp) })),
});

const plainMeasure = ({ id, kind, colour, ports, words, prevents }: Measure) => ({
  id,
  kind,
  colour,
  ports,
  words,
  prevents: prevents.map(({ act }) => act.id),
});

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
