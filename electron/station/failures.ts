import { type FailureStudy, type Finding, type Station, studyFailures, writeCsv } from '../../core/index.ts';
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

/** Failures that were looked at, in one of the forms that the command has. */
export function writeFailures(station: Station, studies: readonly FailureStudy[], form: Options['form']): string {
  if (form === 'json') return asJson({ failures: studies.map(plain) });
  if (form === 'csv') return csvOf(studies);
  return `${station.title}\n\n${textOf(studies)}`;
}

/** What comes of a failure, consequences of consequences and mere advice left out. */
const harmOf = ({ findings }: FailureStudy): readonly Finding[] =>
  findings.filter((f) => f.severity !== 'note' && f.causedBy === undefined);

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

function textOf(studies: readonly FailureStudy[]): string {
  const harmful = studies.filter((s) => harmOf(s).length > 0);
  const lines = harmful.map((s) => {
    const harm = harmOf(s).map((f) => `  ${f.severity.toUpperCase().padEnd(7)} ${f.message}`);
    return `${s.failure.text}${s.weakness ? ` (${s.weakness})` : ''}:\n${harm.join('\n')}\n`;
  });
  const quiet = studies.length - harmful.length;
  const rest = `${studies.length} things tried one at a time; ${quiet} of them show nothing beyond what the sound station shows.`;
  return `${lines.join('\n')}\n${rest}\nAn estimate from the figures entered, one failure at a time; two together are not looked at.\n`;
}

function csvOf(studies: readonly FailureStudy[]): string {
  const rows = studies.flatMap((s) =>
    harmOf(s).map((f) => [s.failure.text, s.hookups.join(' '), f.severity, f.rule, f.message]),
  );
  return writeCsv(['Failure', 'Hook-ups', 'Severity', 'Rule', 'What happens'], rows);
}
