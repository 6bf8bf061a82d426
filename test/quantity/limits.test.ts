import { describe, expect, it } from 'vitest';
import { asKept, type Limit, limitProblem, limits } from '../../core/quantity/limits.ts';

const rows = Object.entries(limits) as [string, Limit][];

describe('the table of limits', () => {
  it.each(rows)('%s takes its ends and nothing beyond, with a sentence that names them', (_name, limit) => {
    const { least, most, sign } = limit;
    for (const end of [least, most]) expect(limitProblem(asKept(end, limit), limit)).toBeUndefined();
    const beyond = (n: number) => n + Math.max(1, Math.abs(n));
    expect(limitProblem(beyond(most), limit)).toMatch(/^It has to be at most .+\. .+ are .+ to .+\.$/);
    expect(limitProblem(-beyond(-least), limit)).toMatch(/^It has to be at least .+\. .+ are .+ to .+\.$/);
    if (sign) expect(limitProblem(asKept(-most || -least, limit), limit)).toBeUndefined();
  });

  it.each<[limit: Limit, value: number, kept: number]>([
    [limits.isolationDb, -30, 30],
    [limits.isolationDb, 30, 30],
    [limits.harmonicsDbc, 45, -45],
    [limits.passiveLossDb, -0.3, 0.3],
    [limits.couplingDb, -20, 20],
    // A gain is a negative loss: its sign is its own.
    [limits.decibels, -13, -13],
    [limits.bundled, 2.6, 3],
    [limits.volts, -0, 0],
  ])('$name: %d is kept as it is meant', (limit, value, kept) => {
    expect(asKept(value, limit)).toBe(kept);
  });

  it('refuses what is no number', () => {
    for (const n of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(limitProblem(n, limits.volts)).toMatch(/\.$/);
  });

  it('says its ends as a field writes them', () => {
    const percent = (n: number) => `${n * 100} %`;
    expect(limitProblem(2, limits.share, percent)).toBe('It has to be at most 100 %. Shares are 0 % to 100 %.');
    expect(limitProblem(-1, limits.ohms)).toBe('It has to be at least 0. Ohms are 0 to 1e12.');
  });
});
