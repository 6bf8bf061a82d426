import {
  compareHookups,
  describeChange,
  draftPowerUp,
  formatExpected,
  hookupsOf,
  portName,
  type Station,
  type SurveyReport,
  sheetOf,
  spiceDecks,
  studyFailures,
  survey,
  surveyReport,
  variablesOf,
  writeStation,
} from '../../core/index.ts';
import { audio } from '../../electron/station/audio.ts';
import { budget } from '../../electron/station/budget.ts';
import { check } from '../../electron/station/check.ts';
import type { Command, Options } from '../../electron/station/command.ts';
import { failures, writeFailures } from '../../electron/station/failures.ts';
import { keydown } from '../../electron/station/keydown.ts';
import { buy } from '../../electron/station/lists/buy.ts';
import { cables } from '../../electron/station/lists/cables.ts';
import { flags } from '../../electron/station/lists/flags.ts';
import { make } from '../../electron/station/lists/make.ts';
import { powerup } from '../../electron/station/powerup.ts';
import { rf } from '../../electron/station/rf.ts';

/** Something that a user could read or hand on. */
export interface ReportText {
  /** `rf --csv`, `finding rf/swr-high`. */
  readonly name: string;
  readonly text: string;
}

/** All commands that print but `powerup`, `failures` and `circuit`, which are done by themselves. */
const commands: Readonly<Record<string, Command>> = { check, cables, make, buy, flags, budget, keydown, rf, audio };

const asked: Options = {
  form: 'text',
  hookup: null,
  control: null,
  moment: 'receive',
  out: null,
  write: null,
  todo: false,
};

/**
 * Every text that the core and the command line make of a station, one at a time: the survey's figures and sentences,
 * each command in each of its forms, the SPICE decks, then what takes longest: the power-up sheet, and what each single
 * failure would lead to (the one not `withPowerUp: false`, the other not `withFailures: false`). Whatever throws on the
 * way is thrown here.
 */
export function* everyReport(
  station: Station,
  { withPowerUp = true, withFailures = true } = {},
): Generator<ReportText> {
  yield { name: 'file', text: writeStation(station) };
  const report = surveyReport(station);
  yield { name: 'survey', text: figuresOf(report) };
  for (const f of report.findings) yield { name: `finding ${f.rule}`, text: [f.title, f.message, f.advice].join('\n') };
  for (const [name, command] of Object.entries(commands)) yield* printed(name, command, station, report);
  for (const hookup of hookupsOf(station))
    for (const [moment, text] of Object.entries(spiceDecks(station, hookup)))
      yield { name: `circuit --spice ${hookup.id} ${moment}`, text };
  yield* words(station, report);
  if (withPowerUp) yield* powerUp(station, report);
  if (!withFailures) return;
  const studies = studyFailures(station);
  yield { name: 'failure study', text: figuresOf(studies) };
  for (const form of ['text', ...failures.forms] as const)
    yield { name: formName('failures', form), text: writeFailures(station, studies, form) };
}

const formName = (command: string, form: Options['form']) => (form === 'text' ? command : `${command} --${form}`);

function* printed(name: string, command: Command, station: Station, report: SurveyReport): Generator<ReportText> {
  for (const form of ['text', ...command.forms] as const) {
    const answer = command.run({ station, report, options: { ...asked, form } });
    if (answer instanceof Promise) throw new Error(`${name} does not answer at once`);
    yield { name: formName(name, form), text: answer.text };
  }
}

function* powerUp(station: Station, report: SurveyReport): Generator<ReportText> {
  const sheet = sheetOf(draftPowerUp(survey(station)));
  yield { name: 'power-up', text: figuresOf(sheet) };
  const expected = sheet.parts.flatMap((part) => part.steps.flatMap((s) => s.expected ?? []));
  yield { name: 'readings', text: expected.map(formatExpected).join('\n') };
  yield* printed('powerup', powerup, station, report);
}

/** What a screen says beside its tables. */
function* words(station: Station, report: SurveyReport): Generator<ReportText> {
  const [first, ...others] = hookupsOf(station);
  if (first)
    for (const other of others)
      yield { name: `hook-ups ${other.id}`, text: figuresOf(compareHookups(station, first, other)) };
  yield { name: 'variables', text: figuresOf(variablesOf(station)) };
  const ports = station.cables.flatMap(({ a, b }) => [portName(station, a), portName(station, b)]);
  yield { name: 'ports', text: ports.join('\n') };
  for (const { id, fix } of report.findings)
    if (fix)
      yield {
        name: `fix of ${id}`,
        text: describeChange(station, fix.change)
          .map((line) => line.words)
          .join('\n'),
      };
}

/** What no text may hold: a figure that is none, a value that is not there, an object in place of its name. */
export const nonsense = /\bNaN\b|Infinity|\bundefined\b|\[object /;

/** Data as text. JSON would turn what is not a number into null, which is also the word for an open end. */
const figuresOf = (data: unknown): string =>
  JSON.stringify(data, (_, value) => (Number.isNaN(value) ? 'NaN' : value), 1) ?? '';
