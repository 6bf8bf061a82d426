import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import settings from '../package.json' with { type: 'json' };
import { endToEnd, smallChecks } from './run/checks.mjs';

const root = path.join(import.meta.dirname, '..');
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' }).split('\0').filter(Boolean);
const textFiles = tracked.filter(
  (file) => existsSync(path.join(root, file)) && !/\.(png|woff2|pdf|ico|icns)$/.test(file),
);
const read = (file: string) => readFileSync(path.join(root, file), 'utf8');

describe('the top level', () => {
  const allowed = ['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json'];
  const folders = ['electron', 'renderer', 'core', 'test', 'e2e'];
  /** Settings that their tools find nowhere else. */
  const toolSettings = ['biome.jsonc', 'tsconfig.base.json'];

  it('holds what a reader looks for, and nothing else', () => {
    const top = new Set(tracked.map((file) => file.split('/')[0] ?? ''));
    const known = new Set([...allowed, ...folders, ...toolSettings]);
    expect([...top].filter((name) => !name.startsWith('.') && !known.has(name))).toEqual([]);
    for (const folder of folders) expect(top).toContain(folder);
  });
});

describe('the lock file', () => {
  it('names packages and checksums, but no place to fetch them from', () => {
    const lock = read('package-lock.json');
    expect(lock.match(/"integrity":/g)?.length).toBeGreaterThan(100);
    expect(lock).not.toMatch(/"resolved":/);
  });
});

describe('tracked text', () => {
  // Written in pieces, so that this file does not hold what it looks for.
  const unwanted: [string, RegExp][] = [
    ['word for a record of talk', new RegExp(`\\btran${'script'}s?\\b`, 'i')],
    [
      'a path of one machine',
      new RegExp(`(^|[\\s"'\`(=:])/(${['wo' + 'rk', 'ro' + 'ot', 'ho' + 'me'].join('|')})/\\w`, 'm'),
    ],
    ['package registry', new RegExp(`registry\\.${'npm'}|\\b${'deb'}\\.debian\\.org`, 'i')],
  ];

  it.each(unwanted)('holds no %s', (_name, pattern) => {
    expect(textFiles.length).toBeGreaterThan(50);
    expect(textFiles.filter((file) => pattern.test(read(file)))).toEqual([]);
  });
});

describe('the screen', () => {
  it.each([
    ['localStorage', 'renderer/shell/keep-choice.ts'],
    ['indexedDB', 'renderer/shell/kept/kept-database.ts'],
  ])('reaches %s, which a browser may forbid, in one place alone', (name, place) => {
    const users = textFiles.filter((file) => file.startsWith('renderer/') && read(file).includes(name));
    expect(users).toEqual([place]);
  });
});

describe('npm test', () => {
  it('runs every check that package.json has', () => {
    const scripts = Object.keys(settings.scripts).filter((name) => /^(check|test):/.test(name));
    const run = [...smallChecks, endToEnd].map(({ script }) => script);
    expect(scripts.length).toBeGreaterThan(5);
    expect(scripts.filter((script) => !run.includes(script))).toEqual([]);
  });
});

describe('reports and what-ifs', () => {
  it('keep nothing of their own from one call to the next', () => {
    const kept = /^(export )?(let |const \w+(?!\w*: Readonly)[^=\n]*= new (Map|Set|WeakMap)\b)/m;
    const files = textFiles.filter((file) => /^core\/(reports|whatif)\//.test(file));
    expect(files.length).toBeGreaterThan(50);
    expect(files.filter((file) => kept.test(read(file)))).toEqual([]);
  });
});
