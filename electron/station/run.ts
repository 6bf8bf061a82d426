import {
  type Hookup,
  hookupsOf,
  type Problem,
  type Station,
  type SurveyReport,
  surveyReport,
} from '../../core/index.ts';
import { type Answer, type Command, type Listing, type Options, surveying } from './command.ts';
import { commandNames, findCommand, optionsOf, usage } from './commands.ts';
import type { Outside } from './outside.ts';
import { oneLine, quoted } from './printable.ts';
import { type CommandLine, readLine } from './read-line.ts';
import { readNamedFile } from './read-named-file.ts';
import { Refusal } from './refusal.ts';
import { tellTrouble } from './tell-trouble.ts';

/** What goes to standard output and to the error stream, and the exit status. */
export interface CommandResult {
  readonly out: string;
  readonly err: string;
  readonly status: 0 | 1 | 2 | 3;
}

/** What is being done, for a report in case it goes wrong. */
interface Work {
  doing: string;
  station: Station | null;
}

/** Does what a command line says. Never throws: what can't be done is refused in a sentence, a fault of ours is told. */
export async function run(args: readonly string[], outside: Outside): Promise<CommandResult> {
  const work: Work = { doing: 'reading the command line', station: null };
  try {
    const { text, status } = await answer(readLine(args), outside, work);
    return { out: text, err: '', status };
  } catch (error) {
    if (error instanceof Refusal) return { out: '', err: `${error.message.trimEnd()}\n`, status: 2 };
    return { out: '', err: `${tellTrouble({ ...work, error })}\n`, status: 3 };
  }
}

async function answer(line: CommandLine, outside: Outside, work: Work): Promise<Answer> {
  if (line.help) return { text: usage, status: 0 };
  const [name, file, more] = line.words;
  if (name === undefined) throw new Refusal(usage);
  const command = findCommand(name);
  if (!command) throw new Refusal(`There is no command ${quoted(name)}; there are ${commandNames.join(', ')}.`);
  const form = formOf(name, command, line);
  if ('list' in command) {
    work.doing = `listing “${name}”`;
    if (file !== undefined) throw new Refusal(`“${name}” needs no file.`);
    return { text: command.list(form), status: 0 };
  }
  if (!file) throw new Refusal(`Name a station file: station ${name} FILE.`);
  if (more !== undefined) throw new Refusal(`One file at a time: ${quoted(more)} is too much.`);
  work.doing = `reading the file for “${name}”`;
  const station = await stationIn(file, outside);
  work.station = station;
  work.doing = `running “${name}”`;
  const report = remembered(() => {
    outside.progress(surveying);
    return surveyReport(station);
  });
  const options = optionsIn(line, form, station, report);
  return command.run({
    station,
    options,
    progress: outside.progress,
    get report() {
      return report();
    },
  });
}

/** What a function gives, worked out when it is asked for first. */
function remembered<T>(make: () => T): () => T {
  let made: { readonly answer: T } | null = null;
  return () => {
    made ??= { answer: make() };
    return made.answer;
  };
}

/** The form that is asked for, after a look at all options: those that mean nothing here or contradict are refused. */
function formOf(name: string, command: Command | Listing, { given }: CommandLine): Options['form'] {
  const taken = optionsOf(command);
  const useless = [...given.keys()].find((option) => !taken.includes(option));
  if (useless) {
    const all = taken.map((option) => `--${option}`).join(', ');
    throw new Refusal(`“${name}” has no use for --${useless}; it takes ${all || 'no options'}.`);
  }
  const [form = 'text', other] = command.forms.filter((one) => given.has(one));
  if (other) throw new Refusal(`--${form} and --${other} contradict each other: one of them at a time.`);
  return form;
}

const lineOf = ({ place, message }: Problem): string => `${oneLine(place)}: ${oneLine(message, 1000)}`;

async function stationIn(file: string, outside: Outside): Promise<Station> {
  const read = await readNamedFile(file, outside);
  if ('station' in read) {
    for (const remark of read.remarks) outside.say(lineOf(remark));
    return read.station;
  }
  const list = read.problems.map(lineOf);
  const name = file === '-' ? 'Standard input' : oneLine(file);
  throw new Refusal(`${name} is not a station that can be read:\n${list.join('\n')}`);
}

function optionsIn(
  { given }: CommandLine,
  form: Options['form'],
  station: Station,
  report: () => SurveyReport,
): Options {
  const hookup = findHookup(station, given.get('hookup'));
  const paper = given.get('paper');
  return {
    form,
    hookup,
    control: findControls(report, hookup, given.get('control')),
    moment: given.get('moment') === 'sending' ? 'sending' : 'receive',
    out: given.get('out') ?? null,
    write: given.get('write') ?? null,
    ...(paper !== undefined && { paper }),
    todo: given.has('todo'),
  };
}

function findHookup(station: Station, name: string | undefined): Hookup | null {
  if (name === undefined) return null;
  const hookups = hookupsOf(station);
  const found = hookups.find((h) => h.id === name) ?? hookups.find((h) => isCalled(h.name, name));
  if (!found)
    throw new Refusal(`There is no hook-up ${quoted(name)}; there are ${listed(hookups.map((h) => h.name))}.`);
  return found;
}

/** The ids of the controls of that name; null where none is named. */
function findControls(report: () => SurveyReport, hookup: Hookup | null, name: string | undefined): string[] | null {
  if (name === undefined) return null;
  const all = report().keydowns.filter((row) => hookup === null || row.hookup === hookup.id);
  const found = all.filter((row) => row.control === name || isCalled(row.controlName, name));
  if (found.length > 0) return found.map((row) => row.control);
  const there = all.length > 0 ? `there are ${listed(all.map((row) => row.controlName))}` : 'there is nothing to press';
  throw new Refusal(`There is no control ${quoted(name)}${hookup ? ` in ${quoted(hookup.name)}` : ''}; ${there}.`);
}

const isCalled = (name: string, asked: string): boolean => name.toLowerCase() === asked.toLowerCase();

const listed = (names: readonly string[]): string => [...new Set(names)].map(quoted).join(', ');
