// The command line: `station COMMAND FILE`. Exit status 0: nothing above doubt; 1: a danger or a fault; 2: not read.
import { parseArgs } from 'node:util';
import { type Hookup, hookupsOf, type Station, surveyReport } from '../../core/index.ts';
import { audio } from './audio.ts';
import { book, drawing } from './book/book.ts';
import { budget } from './budget.ts';
import { check } from './check.ts';
import { circuit } from './circuit.ts';
import { type Command, type Listing, type Options, Refusal } from './command.ts';
import { failures } from './failures.ts';
import { keydown } from './keydown.ts';
import { buy } from './lists/buy.ts';
import { cables } from './lists/cables.ts';
import { flags } from './lists/flags.ts';
import { make } from './lists/make.ts';
import { openFile } from './open-file.ts';
import { powerup } from './powerup.ts';
import { rf } from './rf.ts';
import { rules } from './rules.ts';
import { shelf } from './shelf.ts';

const commands: Record<string, Command> = {
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
  powerup,
  circuit,
  book,
  drawing,
};

const listings: Record<string, Listing> = { rules, shelf };

const usage = `Usage: npm run -s station -- COMMAND FILE [options]

${Object.entries({ ...commands, ...listings })
  .map(([name, { summary }]) => `  ${name.padEnd(9)} ${summary}`)
  .join('\n')}

  --json           for other programs
  --csv            for a spreadsheet (cables, make, buy, flags, budget, rf, audio, failures, powerup)
  --todo           without cables that are made or tested (make, buy)
  --hookup NAME    one hook-up only
  --control NAME   one control only (keydown, rf)
  --moment M       receive or sending (circuit)
  --spice          as a SPICE deck (circuit)
  --out FILE       where a book or a drawing goes
  --paper P        a4 or letter (book)

Exit status: 0 nothing above doubt, 1 a danger or a fault, 2 the file or the command could not be read.
`;

async function run(args: readonly string[]): Promise<{ text: string; status: number }> {
  const { values, positionals } = parse(args);
  const [name, file, ...more] = positionals;
  if (values.help || name === undefined) return { text: usage, status: values.help ? 0 : 2 };
  const form = values.json ? 'json' : values.csv ? 'csv' : values.spice ? 'spice' : 'text';
  const listing = Object.hasOwn(listings, name) ? listings[name] : undefined;
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  const known = listing ?? command;
  if (!known)
    throw new Refusal(
      `There is no command “${name}”; there are ${Object.keys({ ...commands, ...listings }).join(', ')}.`,
    );
  if (form !== 'text' && !known.forms.includes(form)) throw new Refusal(`“${name}” has no --${form}.`);
  if (listing && file !== undefined) throw new Refusal(`“${name}” needs no file.`);
  if (listing) return { text: listing.list(form), status: 0 };
  if (!command || file === undefined) throw new Refusal(`Name a station file: station ${name} FILE.`);
  if (more.length > 0) throw new Refusal(`One file at a time: “${more[0]}” is too much.`);
  if (values.moment !== undefined && values.moment !== 'receive' && values.moment !== 'sending')
    throw new Refusal('--moment is receive or sending.');
  const read = openFile(file);
  if ('problems' in read) {
    const list = read.problems.map(({ place, message }) => `${place}: ${message}`).join('\n');
    throw new Refusal(`${file} is not a station that can be read:\n${list}`);
  }
  for (const { place, message } of read.remarks) process.stderr.write(`${place}: ${message}\n`);
  const options: Options = {
    form,
    hookup: findHookup(read.station, values.hookup),
    control: values.control ?? null,
    moment: values.moment ?? 'receive',
    out: values.out ?? null,
    ...(values.paper !== undefined && { paper: values.paper }),
    todo: values.todo,
  };
  return command.run({ station: read.station, report: surveyReport(read.station), options });
}

function parse(args: readonly string[]) {
  const flag = { type: 'boolean', default: false } as const;
  const named = { type: 'string' } as const;
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        json: flag,
        csv: flag,
        spice: flag,
        todo: flag,
        help: { ...flag, short: 'h' },
        hookup: named,
        control: named,
        moment: named,
        out: named,
        paper: named,
      },
    });
  } catch (error) {
    throw new Refusal(`${(error as Error).message.split('. ')[0]}.`);
  }
}

function findHookup(station: Station, name: string | undefined): Hookup | null {
  if (name === undefined) return null;
  const hookups = hookupsOf(station);
  const found = hookups.find((h) => h.id === name || h.name.toLowerCase() === name.toLowerCase());
  if (!found)
    throw new Refusal(`There is no hook-up “${name}”; there are ${hookups.map((h) => `“${h.name}”`).join(', ')}.`);
  return found;
}

// Whoever reads us may stop early: `station rules | head`.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { text, status } = await run(process.argv.slice(2));
  process.stdout.write(text);
  process.exitCode = status;
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
