import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Outcome, Verdict } from './go-through.ts';
import { type MangledStation, mangledStation } from './mangled-station.ts';
import { manglings as known } from './manglings/index.ts';
import { type Limits, Watched } from './watch/watched.ts';

type Say = (line: string) => void;

interface Asked {
  readonly from: number;
  readonly count: number;
  /** What answers a number with its outcome. */
  readonly worker: URL;
  readonly limits?: Limits;
  /** Where documents that went wrong are kept. */
  readonly folder: string;
  readonly say: Say;
}

/** Far more than any sample takes; an endless loop takes all of it. */
const usualLimits: Limits = { cpuSeconds: 60, megabytes: 1500 };
const verdicts: readonly Verdict[] = ['refused', 'quiet', 'crashed', 'hung', 'nonsense'];
const isRight = (verdict: Verdict): boolean => verdict === 'refused' || verdict === 'quiet';

interface Tried {
  readonly mangled: MangledStation;
  readonly verdict: Verdict;
}

/** Goes through the documents of a range and says what came of them; the exit status: 0 where nothing went wrong. */
export async function run({ from, count, worker, limits = usualLimits, folder, say }: Asked): Promise<0 | 1> {
  const watched = new Watched(worker, limits);
  const tried: Tried[] = [];
  for (let number = from; number < from + count; number++) {
    const mangled = mangledStation(number);
    const outcome = await watched.ask(mangled);
    tried.push({ mangled, verdict: outcome.verdict });
    if (!isRight(outcome.verdict)) report(mangled, outcome, folder, say);
  }
  watched.stop();
  for (const line of summary(tried)) say(line);
  const failed = tried.filter(({ verdict }) => !isRight(verdict)).length;
  say(`${tried.length - failed} passed, ${failed} failed`);
  return failed > 0 ? 1 : 0;
}

/** Keeps the document, and says what was wrong and how to see it again. */
function report({ number, sample, manglings, bytes }: MangledStation, outcome: Outcome, folder: string, say: Say) {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, `${number}.station.json`);
  writeFileSync(file, bytes);
  say(`\n${number}  ${outcome.verdict}: ${sample}, ${manglings.map((m) => m.name).join(', ')}`);
  for (const line of outcome.trouble) say(`  ${line}`);
  say(`  Kept as ${path.relative(process.cwd(), file)}; again with npm run fuzz -- --from ${number} --count 1`);
}

/** A line for each way to spoil a file, then one for all. */
function summary(tried: readonly Tried[]): string[] {
  const rows = Object.entries(known).flatMap(([subject, list]) =>
    list.map(({ name }) => ({
      words: `${subject}: ${name}`,
      of: tried.filter(({ mangled }) => mangled.manglings.some((m) => m.subject === subject && m.name === name)),
    })),
  );
  const widest = Math.max(...rows.map(({ words }) => words.length));
  const lines = rows
    .filter(({ of }) => of.length > 0)
    .map(({ words, of }) => `${words.padEnd(widest)}  ${counts(of, ' ')}`);
  return ['', ...lines, '', `${tried.length} documents: ${counts(tried, '')}`];
}

const counts = (tried: readonly Tried[], none: string): string =>
  verdicts
    .map((verdict) => [verdict, tried.filter((t) => t.verdict === verdict).length] as const)
    .filter(([, n]) => n > 0 || none === '')
    .map(([verdict, n]) => `${n} ${verdict}`)
    .join(', ');
