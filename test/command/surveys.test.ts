import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeStation } from '../../core/station/file/write-station.ts';
import { survey } from '../../core/survey.ts';
import { commandNames } from '../../electron/station/commands.ts';
import { sample } from '../stations/samples.ts';
import { runLine } from './run-line.ts';

// Counts the surveys, and does them all the same.
vi.mock('../../core/survey.ts', async (original) => {
  const real = await original<{ survey: typeof survey }>();
  return { ...real, survey: vi.fn(real.survey) };
});

const surveys = vi.mocked(survey);
beforeEach(() => void surveys.mockClear());
afterAll(() => vi.restoreAllMocks());

/** The hut with a reading that is off, for which causes are looked for. */
const read = writeStation({
  ...sample('hut'),
  readings: [{ step: 'unit/receiver/volts', value: 0, unit: 'V', when: '2026-01-02T03:04:05Z' }],
});

const counts: Record<string, number> = {
  ...{ cables: 0, buy: 0, make: 0, flags: 0, circuit: 0, failures: 0, rules: 0, shelf: 0 },
  ...{ check: 1, keydown: 1, budget: 1, rf: 1, audio: 1, powerup: 1 },
};

describe('a command surveys the station once, or not at all where it needs no survey', () => {
  // Two hand the document to the screen, which surveys it; mix-ups are a survey for each.
  const withoutScreen = commandNames.filter((name) => !['book', 'drawing', 'mixups'].includes(name));
  it.each(withoutScreen)('%s', async (name) => {
    const needsFile = name !== 'rules' && name !== 'shelf';
    const { err, status } = await runLine(needsFile ? [name, '-'] : [name], needsFile ? read : '');
    expect([err, status === 2 || status === 3]).toEqual(['', false]);
    expect(surveys).toHaveBeenCalledTimes(counts[name] ?? -1);
  });
  it('once with a control that is named, too', async () => {
    expect((await runLine(['keydown', 'hut', '--control', 'paddle'])).err).toMatch(/^(There is no control.*\n)?$/);
    expect(surveys).toHaveBeenCalledTimes(1);
  });
  it('once for a sheet that says what would cause a reading', async () => {
    expect((await runLine(['powerup', '-'], read)).out).toMatch(/too low, 2026-01-02: \w/);
    expect(surveys).toHaveBeenCalledTimes(1);
  });
});
