import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { bundle } from '../../electron/start/build.mjs';
import { sampleText } from '../stations/samples.ts';
import { type MangledStation, mangledStation, spoil } from './mangled-station.ts';
import { manglings } from './manglings/index.ts';
import { randomFrom } from './random.ts';
import { run } from './run.ts';
import { Watched } from './watch/watched.ts';

const root = path.join(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'fuzz-'));
const badWorker = pathToFileURL(path.join(import.meta.dirname, 'watch/bad-worker.mjs'));
const limits = { cpuSeconds: 1, megabytes: 60 };
/** Memory is full long before. */
const patient = { ...limits, cpuSeconds: 60 };
const bytes = Buffer.from('{}');
const names = ['hut-amplifier', 'two-metre-mast', 'old-and-new', 'hill-table'];

afterAll(() => rmSync(folder, { recursive: true }));

describe('spoilt stations', { timeout: 600_000 }, () => {
  // `npm run fuzz` goes through as many as one likes.
  it('the first of them are refused with a place, or read, surveyed and reported on without nonsense', async () => {
    await bundle({ entry: 'test/fuzz/index.ts', outDir: 'dist/fuzz-test', file: 'fuzz.mjs', format: 'es' });
    const worker = pathToFileURL(path.join(root, 'dist/fuzz-test/fuzz.mjs'));
    const said: string[] = [];
    const status = await run({ from: 0, count: 200, worker, folder, say: (line) => said.push(line) });
    expect(said.at(-1), said.join('\n')).toBe('200 passed, 0 failed');
    expect(status).toBe(0);
  });
  it('a number gives the same one every time, and another one others', () => {
    // As text: bytes are compared one by one.
    const readable = ({ bytes, ...rest }: MangledStation) => ({ ...rest, text: bytes.toString('latin1') });
    for (const number of [0, 7, 4711]) {
      expect(readable(mangledStation(number))).toEqual(readable(mangledStation(number)));
      expect(mangledStation(number).bytes.equals(mangledStation(number + 1).bytes)).toBe(false);
    }
  });
  it.each(Object.entries(manglings).flatMap(([subject, list]) => list.map((m) => [subject, m.name, m] as const)))(
    '%s: %s does something to one of a few samples',
    (_, __, mangling) => {
      const isChanged = [1, 2, 3, 4, 5, 6, 7, 8].some((seed) => {
        const text = sampleText(names[seed % names.length] ?? '');
        return !spoil(JSON.parse(text), [mangling], randomFrom(seed)).equals(
          spoil(JSON.parse(text), [], randomFrom(seed)),
        );
      });
      expect(isChanged).toBe(true);
    },
  );
});

describe('the watchdog', { timeout: 300_000 }, () => {
  it.each([
    ['an endless loop', 1, 'hung', /not done after 1 s/],
    ['what takes all memory', 2, 'crashed', /memory/],
    ['what throws', 3, 'crashed', /thrown where nothing catches it/],
    ['what leaves', 4, 'crashed', /left with 7/],
  ] as const)('ends %s, says so, and goes on with the next', async (_, number, verdict, words) => {
    const watched = new Watched(badWorker, verdict === 'hung' ? limits : patient);
    const outcome = await watched.ask({ number, bytes });
    expect(outcome.verdict).toBe(verdict);
    expect(outcome.trouble.join()).toMatch(words);
    expect(await watched.ask({ number: 0, bytes })).toEqual({ verdict: 'quiet', trouble: [] });
    watched.stop();
  });
  it('what went wrong is kept, named, and ends the run with a status', async () => {
    const said: string[] = [];
    const status = await run({ from: 4, count: 3, worker: badWorker, limits, folder, say: (line) => said.push(line) });
    expect(status).toBe(1);
    expect(said.at(-1)).toBe('1 passed, 2 failed');
    expect(said.at(-2)).toBe('3 documents: 0 refused, 1 quiet, 1 crashed, 0 hung, 1 nonsense');
    expect(said.join('\n')).toMatch(
      /5 {2}nonsense: .*\n {2}a bad word\n {2}Kept as .*5\.station\.json; again with .*--from 5 --count 1/,
    );
    expect(existsSync(path.join(folder, '5.station.json'))).toBe(true);
  });
});
