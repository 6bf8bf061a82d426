import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { closeSync, mkdtempSync, openSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle } from '../../electron/start/build.mjs';
import { terminalLine } from '../../electron/station/terminal-line.ts';
import { needs, needsLinux } from '../needs.ts';
import { sampleText } from '../stations/samples.ts';

const root = path.join(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'output-'));
const program = path.join(root, 'dist/output-test/station.mjs');
const hasScript = process.platform === 'linux' && spawnSync('script', ['--version']).status === 0;

beforeAll(() =>
  bundle({ entry: 'electron/station/main.ts', outDir: 'dist/output-test', file: 'station.mjs', format: 'es' }),
);
afterAll(() => rmSync(folder, { recursive: true }));

/** One sentence, no trace. */
const sentence = /^[^\n]+\.\n$/;

describe('an output that takes nothing', () => {
  it.each([['rules'], ['cables', 'hut', '--csv']])(
    'a full device: %s ends with a sentence and 2',
    needsLinux,
    (...line) => {
      const full = openSync('/dev/full', 'w');
      const { stderr, status } = spawnSync(process.execPath, [program, ...line], {
        stdio: ['ignore', full, 'pipe'],
        encoding: 'utf8',
      });
      closeSync(full);
      expect(stderr).toBe('The result could not be written: there is no space left.\n');
      expect(status).toBe(2);
    },
  );
  it('a full error stream changes nothing', needsLinux, () => {
    const full = openSync('/dev/full', 'w');
    const { status } = spawnSync(process.execPath, [program, 'check', 'nowhere.json'], {
      stdio: ['ignore', 'pipe', full],
    });
    closeSync(full);
    expect(status).toBe(2);
  });
  it('a file that may take only a part of it is not taken for all of it', needsLinux, () => {
    const part = path.join(folder, 'part.json');
    const line = `ulimit -f 8; exec "$0" "$1" shelf --json > "$2"`;
    const { stderr, status } = spawnSync('sh', ['-c', line, process.execPath, program, part], { encoding: 'utf8' });
    expect(statSync(part).size).toBeGreaterThan(0);
    expect(stderr).toMatch(/^The result could not be written: /);
    expect(stderr).toMatch(sentence);
    expect(status).toBe(2);
  });
  it('a reader that stops early is no trouble', async () => {
    const child = spawn(process.execPath, [program, 'shelf', '--json'], { stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.destroy();
    const [said, [status]] = await Promise.all([text(child.stderr), once(child, 'close')]);
    expect([said, status]).toEqual(['', 0]);
  });
});

it('a large output reaches a slow reader whole', async () => {
  const child = spawn(process.execPath, [program, 'shelf', '--json'], { stdio: ['ignore', 'pipe', 'inherit'] });
  child.stdout.pause();
  await once(child.stdout, 'readable');
  const whole = await text(child.stdout);
  // More than a pipe holds.
  expect(whole.length).toBeGreaterThan(100_000);
  expect(JSON.parse(whole).kinds.length).toBeGreaterThan(80);
});

describe('standard input', () => {
  const check = (input: string | undefined, stdin: 'pipe' | 'ignore' = 'pipe') =>
    spawnSync(process.execPath, [program, 'cables', '-', '--csv'], {
      input,
      stdio: [stdin, 'pipe', 'pipe'],
      encoding: 'utf8',
    });
  it('is read to its end', () => {
    const { stdout, stderr, status } = check(sampleText('hut'));
    expect([stderr, status]).toEqual(['', 0]);
    expect(stdout.trim().split('\r\n')).toHaveLength(18);
  });
  it.each([
    ['with nothing on it', '', 'pipe'],
    ['that is closed', undefined, 'ignore'],
  ] as const)('%s is told', (_name, input, stdin) => {
    const { stdout, stderr, status } = check(input, stdin);
    expect([stdout, status]).toEqual(['', 2]);
    expect(stderr).toContain('standard input: There is nothing in it.');
  });
});

describe('how far long work is', () => {
  const written: string[] = [];
  const stream = (isTTY: boolean) => ({
    isTTY,
    columns: 20,
    write: (words: string) => {
      written.push(words);
      return true;
    },
  });
  it('is one line, written over and taken away at the end', () => {
    written.length = 0;
    const { progress, clear } = terminalLine(stream(true));
    progress('a long piece of work indeed', 1, 2);
    progress('short');
    clear();
    clear();
    expect(written).toEqual(['\ra long piece of wor', `\r${'short ...'.padEnd(19)}`, `\r${' '.repeat(9)}\r`]);
  });
  it('is nothing to a file or a pipe', () => {
    written.length = 0;
    const { progress, clear } = terminalLine(stream(false));
    progress('work', 1, 2);
    clear();
    expect(written).toEqual([]);
  });
  it('is seen on a terminal', needs('the program script of Linux', hasScript), () => {
    const line = `'${process.execPath}' '${program}' failures hut-first-draft --json`;
    const { stdout } = spawnSync('script', ['-qec', line, '/dev/null'], { encoding: 'utf8', input: '' });
    expect(stdout).toMatch(/^\rfailures tried: 1 of \d+ \.\.\./);
    // What is left is the answer, after the line was taken away.
    expect(JSON.parse(stdout.slice(stdout.lastIndexOf(' \r{') + 2)).failures.length).toBeGreaterThan(10);
  });
});
