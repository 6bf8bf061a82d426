import { parseArgs } from 'node:util';
import { type OptionName, optionNames, optionTable, optionWords } from './option-table.ts';
import { quoted } from './printable.ts';
import { Refusal } from './refusal.ts';

/** A command line taken apart: words, and options with their values. */
export interface CommandLine {
  readonly help: boolean;
  readonly words: readonly string[];
  readonly given: ReadonlyMap<OptionName, string>;
}

const shapes = Object.fromEntries(
  optionNames.map((name) => [name, { type: optionWords(name).value === undefined ? 'boolean' : 'string' } as const]),
);

/** Takes a command line apart; refuses options that there are not, that come twice, or that lack their value. */
export function readLine(args: readonly string[]): CommandLine {
  const { tokens } = parseArgs({
    args: [...args],
    allowPositionals: true,
    strict: false,
    tokens: true,
    options: { ...shapes, help: { type: 'boolean', short: 'h' } },
  });
  if (tokens.some((token) => token.kind === 'option' && token.name === 'help'))
    return { help: true, words: [], given: new Map() };
  const words: string[] = [];
  const given = new Map<OptionName, string>();
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    if (!isOption(token.name))
      throw new Refusal(`There is no option ${quoted(token.rawName)}; --help tells which there are.`);
    if (given.has(token.name)) throw new Refusal(`--${token.name} is there twice; once is enough.`);
    given.set(token.name, valueFor(token.name, token.value, token.inlineValue));
  }
  return { help: false, words, given };
}

const isOption = (name: string): name is OptionName => Object.hasOwn(optionTable, name);

/** The value of an option, a word or empty where it has none; `inline` is one after an equals sign. */
function valueFor(name: OptionName, value: string | undefined, inline: boolean | undefined): string {
  const { value: called, oneOf } = optionWords(name);
  if (called === undefined) {
    if (value !== undefined) throw new Refusal(`--${name} stands alone; it takes no ${quoted(value)}.`);
    return '';
  }
  // What looks like an option is one: the value was forgotten. After an equals sign it is what was meant.
  if (value === undefined || value.trim() === '' || (!inline && /^-./.test(value)))
    throw new Refusal(`--${name} needs a value: --${name} ${oneOf?.join(' or ') ?? called}.`);
  if (oneOf && !oneOf.includes(value)) throw new Refusal(`--${name} is ${oneOf.join(' or ')}, not ${quoted(value)}.`);
  return value;
}
