interface OptionWords {
  readonly does: string;
  /** What its value is called; without one it takes none. */
  readonly value?: string;
  /** The only values that there are. */
  readonly oneOf?: readonly string[];
}

/** Every option of the line. What a command takes of them stands with the command. */
export const optionTable = {
  json: { does: 'for other programs' },
  csv: { does: 'for a spreadsheet' },
  spice: { does: 'as a SPICE deck' },
  todo: { does: 'without cables that are made or tested' },
  hookup: { does: 'one hook-up only', value: 'NAME' },
  control: { does: 'one control only', value: 'NAME' },
  moment: { does: 'receive or sending', value: 'M', oneOf: ['receive', 'sending'] },
  out: { does: 'where it goes', value: 'FILE' },
  write: { does: 'keeps each as a station file, drawn wrong', value: 'FOLDER' },
  paper: { does: 'a4 or letter', value: 'P', oneOf: ['a4', 'letter'] },
} as const satisfies Record<string, OptionWords>;

export type OptionName = keyof typeof optionTable;

export const optionNames = Object.keys(optionTable) as OptionName[];

export const optionWords = (name: OptionName): OptionWords => optionTable[name];
