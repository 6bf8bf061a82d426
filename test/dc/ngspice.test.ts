import { describe, expect, it } from 'vitest';
import { writeSpice } from '../../core/dc/write-spice.ts';
import type { Reach } from '../../core/keydown/key-down.ts';
import { survey } from '../../core/survey.ts';
import { sample } from '../stations/samples.ts';
import { needsNgspice, runNgspice } from './run-ngspice.ts';

// Skipped where ngspice isn't installed; `npm test` installs it where apt is there.
describe('the samples’ networks, solved by ngspice', needsNgspice, () => {
  const cases = ['hut', 'hut-first-draft'].flatMap((name) =>
    survey(sample(name)).hookups.flatMap(({ hookup, trial }) => {
      const opened = new Set(trial.opened.map((o) => o.part));
      const sending = trial.keyDowns[0]?.moments.find((m) => m.name === 'sending')?.reach as Reach;
      return [
        { name: `${name}, ${hookup.name}, at first`, trial, reach: trial.atFirst, open: new Set<number>() },
        { name: `${name}, ${hookup.name}, receive`, trial, reach: trial.receive, open: opened },
        { name: `${name}, ${hookup.name}, sending`, trial, reach: sending, open: opened },
      ];
    }),
  );
  it.each(cases)('$name: every node to 1e-6', ({ name, trial, reach, open }) => {
    const solved = runNgspice(writeSpice(trial.circuit, name, reach.on, open, reach.dc));
    expect(solved.size).toBeGreaterThan(100);
    for (const [node, volts] of solved) {
      const ours = reach.dc.volts[node] ?? Number.NaN;
      // A millivolt is the floor: below it the deck's printed digits and the solver's tolerances are what is compared.
      expect(Math.abs(ours - volts), trial.circuit.nodes[node]).toBeLessThanOrEqual(
        1e-6 * Math.max(Math.abs(volts), 1e-3),
      );
    }
  });
});
