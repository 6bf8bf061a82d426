import { spawnSync } from 'node:child_process';
import path from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Complex, magnitude, subtract } from '../../core/quantity/complex.ts';
import type { Line } from '../../core/rf/line.ts';
import { needs } from '../needs.ts';
import { randomLine } from './random-line.ts';
import { walkLine } from './walk.ts';

// The distribution's own interpreter: its package is seen by no other.
const python = '/usr/bin/python3';
const isHere = spawnSync(python, ['-c', 'import importlib.util as u; exit(u.find_spec("skrf") is None)']).status === 0;

interface Answer {
  readonly zin: readonly [number, number];
  readonly loss: number;
}

/** All lines in one process: to start one takes longer than to work out hundreds. */
function askScikitRf(lines: readonly Line[]): Map<Line, Answer> {
  const { stdout, stderr, status } = spawnSync(python, [path.join(import.meta.dirname, 'lines.py')], {
    input: JSON.stringify(lines),
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  // Before it the library may say what it misses for drawing plots.
  const answers: Answer[] = JSON.parse(stdout.trim().split('\n').at(-1) ?? '');
  expect(answers.length).toBe(lines.length);
  return new Map(lines.map((line, i) => [line, answers[i] as Answer]));
}

const point = ([re, im]: readonly [number, number]): Complex => ({ re, im });

function expectSame(asked: Line, answer: Answer) {
  const { inputOhms, totalLossDb } = walkLine(asked);
  const wanted = point(answer.zin);
  const name = JSON.stringify(asked);
  expect(magnitude(subtract(inputOhms, wanted)), name).toBeLessThanOrEqual(1e-6 * magnitude(wanted));
  expect(Math.abs(totalLossDb - answer.loss), name).toBeLessThanOrEqual(1e-6 * answer.loss);
}

const golden = (
  mhz: number,
  z0: number,
  velocityFactor: number,
  lossDbPer100m: number,
  lengthM: number,
  re: number,
  im = 0,
): Line => ({ hertz: mhz * 1e6, z0, velocityFactor, lossDbPer100m, lengthM, load: { re, im } });

const cases: Record<string, readonly Line[]> = {
  'G1 to G7': [
    golden(14, 50, 0.66, 5, 30, 25, 25),
    golden(7, 50, 0.66, 1.8, 20, 200),
    golden(3.6, 50, 0.85, 0.8, 40, 12, -80),
    golden(28.5, 50, 0.82, 5, 15, 100, -50),
    golden(50, 75, 0.83, 4.8, 25, 50),
    golden(144, 50, 0.66, 18.6, 10, 50),
    golden(10.1, 50, 0.66, 2, 4.895, 25),
  ],
  '200 lines of real Z0': fc.sample(randomLine, { seed: 200, numRuns: 200 }),
};

// Skipped where scikit-rf isn't installed; `npm test` installs it where apt is there. The same G1 to G7 stand as printed
// figures in test/published/rf-line.test.ts.
describe('lines as scikit-rf works them out, to 1e-6', needs('scikit-rf', isHere), () => {
  let answers: Map<Line, Answer>;
  beforeAll(() => {
    answers = askScikitRf(Object.values(cases).flat());
  });
  it.each(Object.entries(cases))('%s', (_, lines) => {
    for (const line of lines) expectSame(line, answers.get(line) as Answer);
  });
});
