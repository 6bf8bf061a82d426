import { readStation, type Station, writeStation } from '../../core/index.ts';
import { everyReport } from '../stations/every-report.ts';
import { editAndUndo } from './edit-and-undo.ts';
import { nonsenseIn } from './judge/nonsense.ts';
import { whatIsWrongWithRefusal } from './judge/refusal.ts';
import { pictureOf } from './picture.ts';
import { randomFrom } from './random.ts';

/** What became of a document: refused in order, read and reported on in order, or what went wrong. */
export type Verdict = 'refused' | 'quiet' | 'crashed' | 'hung' | 'nonsense';

export interface Outcome {
  readonly verdict: Verdict;
  /** What was being done when it went wrong, and what happened; empty where nothing did. */
  readonly trouble: readonly string[];
}

/** Not every document goes through what takes long. */
const powerUpEvery = 10;
const pictureEvery = 20;
const failuresEvery = 200;

/**
 * Takes a file's bytes through all that the program does with them without a screen: read, written and read again,
 * edited and undone, surveyed and reported on. The number only chooses the edits and how far it goes.
 */
export function goThrough(bytes: Buffer, number: number): Outcome {
  const steps: string[] = [];
  try {
    const read = readStation(bytes.toString('utf8'));
    if ('problems' in read) return judged('refused', whatIsWrongWithRefusal(read.problems));
    const wrong: string[] = [];
    const given = bytes.toString('utf8');
    for (const step of stepsOf(read.station, number, given)) {
      steps.push(step.name);
      wrong.push(...step.wrong);
      // The first few say enough.
      if (wrong.length > 5) break;
    }
    return judged('quiet', wrong);
  } catch (error) {
    const { stack, message } = error instanceof Error ? error : new Error(String(error));
    return { verdict: 'crashed', trouble: [`after ${steps.at(-1) ?? 'nothing'}: ${shortStack(stack ?? message)}`] };
  }
}

const judged = (verdict: Verdict, wrong: readonly string[]): Outcome =>
  wrong.length > 0 ? { verdict: 'nonsense', trouble: wrong } : { verdict, trouble: [] };

const shortStack = (stack: string): string => stack.split('\n').slice(0, 8).join('\n').slice(0, 2000);

interface Step {
  readonly name: string;
  readonly wrong: readonly string[];
}

function* stepsOf(station: Station, number: number, given: string): Generator<Step> {
  yield { name: 'write and read', wrong: whatIsNotReadBack(station) };
  yield { name: 'edit and undo', wrong: editAndUndo(station, randomFrom(number)) };
  const withPowerUp = number % powerUpEvery === 0;
  const withFailures = number % failuresEvery === 0 && station.units.length < 30;
  for (const report of everyReport(station, { withPowerUp, withFailures }))
    yield { name: report.name, wrong: nonsenseIn(report, given) };
  if (number % pictureEvery !== 0) return;
  const picture = { name: 'drawing.svg', text: pictureOf(station) };
  yield { name: picture.name, wrong: nonsenseIn(picture, given) };
}

function whatIsNotReadBack(station: Station): string[] {
  const text = writeStation(station);
  const again = readStation(text);
  if ('problems' in again)
    return again.problems.slice(0, 3).map((p) => `what was written is refused: ${p.place}: ${p.message}`);
  return writeStation(again.station) === text ? [] : ['what was written reads otherwise'];
}
