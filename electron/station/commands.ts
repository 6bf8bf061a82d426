import { audio } from './audio.ts';
import { book, drawing } from './book/book.ts';
import { budget } from './budget.ts';
import { check } from './check.ts';
import { circuit } from './circuit.ts';
import type { Command, Listing } from './command.ts';
import { failures } from './failures.ts';
import { keydown } from './keydown.ts';
import { buy } from './lists/buy.ts';
import { cables } from './lists/cables.ts';
import { flags } from './lists/flags.ts';
import { make } from './lists/make.ts';
import { mixups } from './mixups.ts';
import { type OptionName, optionNames, optionWords } from './option-table.ts';
import { powerup } from './powerup.ts';
import { rf } from './rf.ts';
import { rules } from './rules.ts';
import { shelf } from './shelf.ts';

/** Every command of the line, by name; the last two want no station. */
const commands: Readonly<Record<string, Command | Listing>> = {
  check,
  cables,
  make,
  buy,
  flags,
  budget,
  keydown,
  rf,
  audio,
  failures,
  mixups,
  powerup,
  circuit,
  book,
  drawing,
  rules,
  shelf,
};

export const commandNames = Object.keys(commands);

export const findCommand = (name: string): Command | Listing | undefined =>
  Object.hasOwn(commands, name) ? commands[name] : undefined;

/** The options that mean something to a command. */
export const optionsOf = (command: Command | Listing): readonly OptionName[] =>
  'options' in command ? [...command.forms, ...command.options] : command.forms;

export const usage = `Usage: npm run -s station -- COMMAND FILE [options]

${Object.entries(commands)
  .map(([name, { summary }]) => `  ${name.padEnd(9)} ${summary}`)
  .join('\n')}

FILE is a station file, the name of a sample, or - for standard input.

${optionNames.map(optionLine).join('\n')}

Exit status: 0 nothing above doubt, 1 a danger or a fault, 2 the file or the command could not be read or the result not
written, 3 a fault of the program itself: nothing is said about the station then.
`;

function optionLine(option: OptionName): string {
  const { does, value = '' } = optionWords(option);
  const takes = (name: string) => optionsOf(commands[name] as Command | Listing).includes(option);
  const takers = commandNames.filter(takes);
  const others = commandNames.filter((name) => !takes(name));
  const who = others.length < takers.length ? `all but ${others.join(', ')}` : takers.join(', ');
  return `  ${`--${option} ${value}`.padEnd(16)} ${does} (${who})`;
}
