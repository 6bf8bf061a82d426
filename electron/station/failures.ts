import {
  counted,
  type FailureStudy,
  type HarmfulFailure,
  type RankedFailures,
  rankFailures,
  type Station,
  studyFailures,
  writeCsv,
} from '../../core/index.ts';
import { asJson, type Command, type Options } from './command.ts';

export const failures: Command = {
  summary: 'what happens when one thing fails: a core, a contact, a fuse, a relay, a supply',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, options, progress }) {
    const tell = (done: number, of: number) => progress?.('failures tried', done, of);
    const studies = studyFailures(station, tell).filter(
      (s) => !options.hookup || s.hookups.includes(options.hookup.id),
    );
    return { text: writeFailures(station, studies, options.form), status: 0 };
  },
};

/** Failures that were looked at, in one of the forms that the command has: those that do harm first, worst first. */
export function writeFailures(station: Station, studies: readonly FailureStudy[], form: Options['form']): string {
  const ranked = rankFailures(studies);
  if (form === 'json') return asJson({ failures: inOrder(ranked, studies).map(plain) });
  if (form === 'csv') return csvOf(ranked);
  return `${station.title}\n\n${textOf(ranked)}`;
}

const harmfulOf = ({ groups }: RankedFailures): readonly HarmfulFailure[] => groups.flatMap((g) => g.failures);

function inOrder(ranked: RankedFailures, studies: readonly FailureStudy[]): readonly FailureStudy[] {
  const harmful = harmfulOf(ranked);
  const told = new Set(harmful.map((s) => s.failure.id));
  return [...harmful, ...studies.filter((s) => !told.has(s.failure.id))];
}

const plain = (study: FailureStudy) => ({
  id: study.failure.id,
  kind: study.failure.kind,
  text: study.failure.text,
  at: study.failure.at,
  hookups: study.hookups,
  weakness: study.weakness,
  findings: study.findings.map(({ id, rule, severity, message, causedBy }) => ({
    id,
    rule,
    severity,
    message,
    causedBy,
  })),
});

function textOf({ tried, harmless, groups }: RankedFailures): string {
  const parts = groups.map(({ title, cure, failures }) => {
    const lines = failures.map(({ failure, harms }) => {
      const said = harms.map((f) => `    ${f.severity.toUpperCase().padEnd(7)} ${f.message}`);
      return `  ${failure.text}:\n${said.join('\n')}\n`;
    });
    return `${title}\n  What would cure it: ${cure}\n\n${lines.join('\n')}`;
  });
  const rest = `${counted(tried, 'thing', 'things')} tried one at a time; ${harmless} of them show nothing beyond what the sound station shows.`;
  return `${parts.join('\n')}\n${rest}\nAn estimate from the figures entered, one failure at a time; two together are not looked at.\n`;
}

function csvOf(ranked: RankedFailures): string {
  const rows = harmfulOf(ranked).flatMap(({ failure, hookups, weakness, harms }) =>
    harms.map((f) => [failure.text, hookups.join(' '), weakness ?? '', f.severity, f.rule, f.message]),
  );
  return writeCsv(['Failure', 'Hook-ups', 'Weakness', 'Severity', 'Rule', 'What happens'], rows);
}
