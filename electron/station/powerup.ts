import {
  type Cause,
  causesOf,
  draftPowerUp,
  explain,
  formatExpected,
  formatQuantity,
  judgeReading,
  nowAndBefore,
  type PowerUpDraft,
  type PowerUpPart,
  type PowerUpSheet,
  type PowerUpStep,
  sheetOf,
  survey,
  writeCsv,
} from '../../core/index.ts';
import { asJson, type Command, surveying } from './command.ts';
import { textTable } from './text-table.ts';

export const powerup: Command = {
  summary: 'the steps of a first power-up: what each meter should read, what was read, what would explain it',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, options, progress }) {
    progress?.(surveying);
    const tell = (done: number, of: number) => progress?.('parts of the sheet done', done, of);
    const draft = draftPowerUp(explain(survey(station)), options.hookup?.id ?? null, tell);
    const sheet = sheetOf(draft);
    const read = readSteps(draft);
    if (options.form === 'json') return { text: asJson({ ...sheet, parts: sheet.parts.map(withRead) }), status: 0 };
    if (options.form === 'csv') return { text: csvOf(sheet, read), status: 0 };
    return { text: `${station.title}\n\n${textOf(sheet, read)}`, status: 0 };

    function withRead(part: PowerUpPart) {
      return { ...part, steps: part.steps.map((step) => ({ ...step, read: read.get(step.id) ?? null })) };
    }
  },
};

/** The newest reading of a step. */
interface Read {
  readonly value: number;
  readonly when: string;
  readonly verdict: ReturnType<typeof judgeReading>;
  readonly causes: readonly Cause[];
}

function readSteps(draft: PowerUpDraft): Map<string, Read> {
  const { station } = draft;
  const steps = draft.parts.flatMap((part) => part.steps);
  const values = steps.flatMap((step) => {
    const { now } = nowAndBefore(station, step.id, '');
    return now && step.expected ? [{ step: step.id, value: now.value, when: now.when, expected: step.expected }] : [];
  });
  return new Map(
    values.map((one) => {
      const { step, value, when, expected } = one;
      const others = values.filter((v) => v !== one);
      const causes = causesOf(draft, { step, value }, others);
      return [step, { value, when, verdict: judgeReading(expected, value), causes }];
    }),
  );
}

function textOf({ first, parts, cautions }: PowerUpSheet, read: ReadonlyMap<string, Read>): string {
  if (parts.length === 0) return 'Nothing gives power yet.\n';
  let number = 0;
  const tables = parts.map(({ title, before, steps }) => {
    const rows = steps.map((step) => {
      number++;
      return [String(number), ...cells(step, read.get(step.id))];
    });
    return `${title.toUpperCase()}\n${before ? `${before}\n` : ''}${textTable(['', 'Do', 'Where', 'Expect', 'Read'], rows, '')}`;
  });
  const wrong = first.length > 0 ? `Put right first:\n${first.map((line) => `  ${line}`).join('\n')}\n\n` : '';
  const warned =
    cautions.length > 0
      ? `CAUTIONS\n${textTable(
          ['Of', 'Caution'],
          cautions.map(({ units, text }) => [units, text]),
          '',
        )}\n`
      : '';
  return `${wrong}${tables.join('\n')}\n${warned}An estimate from the figures entered. Mains wiring and licences: by the local rules.\n`;
}

function cells({ text, where, expected, warning }: PowerUpStep, read: Read | undefined): string[] {
  const because = read?.causes.map((c) => c.text).join('; or ');
  const shown =
    read && expected
      ? `${formatQuantity(read.value, expected.quantity)}, ${read.verdict}, ${read.when.slice(0, 10)}`
      : '';
  return [
    warning ? `${text} ${warning}` : text,
    where,
    expected ? formatExpected(expected) : '',
    because ? `${shown}: ${because}` : shown,
  ];
}

/** A row for each step; volts, amperes, ohms and watts as plain numbers, an open circuit as the word. */
function csvOf({ parts }: PowerUpSheet, read: ReadonlyMap<string, Read>): string {
  const head = [
    'Part',
    'Step',
    'Do',
    'Where',
    'Quantity',
    'Expected',
    'From',
    'To',
    'Read',
    'When',
    'Verdict',
    'Causes',
  ];
  const rows = parts.flatMap(({ title, steps }) =>
    steps.map(({ id, text, where, expected }) => {
      const found = read.get(id);
      return [
        title,
        id,
        text,
        where,
        expected?.quantity ?? '',
        expected ? (expected.value ?? 'open') : '',
        expected?.from ?? '',
        expected?.to ?? '',
        found?.value ?? '',
        found?.when ?? '',
        found?.verdict ?? '',
        found?.causes.map((c) => c.text).join('; ') ?? '',
      ];
    }),
  );
  return writeCsv(head, rows);
}
