import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commandNames } from '../../electron/station/commands.ts';
import { tellTrouble } from '../../electron/station/tell-trouble.ts';
import { runLine } from './run-line.ts';

// Stands in for a fault in the core: everything that computes ends as a walk without end does.
vi.mock('../../core/index.ts', async (original) => {
  const fail = () => {
    throw new RangeError('Maximum call stack size exceeded');
  };
  const computes = [
    'surveyReport',
    'studyFailures',
    'studyMixUps',
    'survey',
    'listCables',
    'spiceDecks',
    'flagsOf',
    'whatToMake',
    'whatToBuy',
  ];
  return { ...(await original<object>()), ...Object.fromEntries(computes.map((name) => [name, fail])) };
});

const folder = mkdtempSync(path.join(tmpdir(), 'trouble-'));
beforeEach(() => vi.stubEnv('TMPDIR', folder));
afterEach(() => vi.unstubAllEnvs());
afterAll(() => rmSync(folder, { recursive: true }));

describe('a fault of the program', () => {
  const withStation = commandNames.filter((name) => !['book', 'drawing', 'rules', 'shelf'].includes(name));
  it.each(withStation)(
    '“%s” ends with 3, one sentence without a trace, and a report with the station',
    async (name) => {
      const { out, err, status } = await runLine([name, 'hut']);
      expect([out, status]).toEqual(['', 3]);
      expect(err).toMatch(/^[^\n]+\.\n$/);
      expect(err).not.toMatch(/\bat .*:\d+:\d+/);
      const file = / is in (\S+)\.\n$/.exec(err)![1]!;
      expect(path.dirname(file)).toBe(folder);
      const report = readFileSync(file, 'utf8');
      for (const words of [`running “${name}”`, 'Maximum call stack size exceeded', '"transmitter"'])
        expect(report).toContain(words);
      expect(err).toContain(`running “${name}” (Maximum call stack size exceeded)`);
      if (process.platform !== 'win32') expect(statSync(file).mode & 0o077).toBe(0);
    },
  );
  it('is never taken for a finding or for a file that can’t be read', async () => {
    expect((await runLine(['check', 'nowhere.json'])).status).toBe(2);
    expect((await runLine(['check', 'hut', '--json'])).status).toBe(3);
  });
});

describe('the report', () => {
  const trouble = { doing: 'running “check”', error: new Error('\u001b[31mbad\nluck'), station: null };
  it('goes where it can, and overwrites nothing', () => {
    const before = readdirSync(folder).length;
    const said = tellTrouble(trouble, [path.join(folder, 'no such folder'), folder]);
    tellTrouble(trouble, [folder]);
    expect(readdirSync(folder)).toHaveLength(before + 2);
    expect(said).toContain(folder);
  });
  it('that can’t be written is said, and nothing fails', () =>
    expect(tellTrouble(trouble, [path.join(folder, 'none')])).toBe(
      'Stationwright itself failed while running “check” ([31mbad luck), which says nothing about the station; a report on it could not be written.',
    ));
  it('is there whatever was thrown', () => {
    for (const error of [null, undefined, 'text', { toString: null }, Object.create(null), Symbol('x')])
      expect(tellTrouble({ ...trouble, error }, [folder])).toMatch(/ is in /);
  });
});
