import { describe, expect, it } from 'vitest';
import { survey } from '../../core/survey.ts';
import { audioOf, levelsAt, levelsFrom, ohmsOn } from '../../core/trial/audio-levels.ts';
import { sample, sampleNames } from '../stations/samples.ts';

const trials = sampleNames.flatMap((name) =>
  survey(sample(name)).hookups.map(({ hookup, trial }) => ({ name, hookup: hookup.name, trial })),
);

describe('audio level by level', () => {
  it('has something to look at', () => expect(trials.some(({ trial }) => audioOf(trial).length > 0)).toBe(true));
  it.each(trials)('is at its input, from its output: $name, $hookup', ({ trial }) => {
    const { sources, loads } = trial.circuit.signals;
    const all = audioOf(trial).flatMap(({ name, levels }) => levels.map((level) => ({ name, ...level })));
    for (const [i, output] of sources.entries()) {
      const own = all.filter(({ source }) => source === i);
      expect(levelsFrom(trial, i)).toEqual(own.map(({ name, load, volts }) => ({ name, to: loads[load], volts })));
      for (const { load } of own) expect(levelsAt(trial, load).some(({ from }) => from === output)).toBe(true);
      const drives = audioOf(trial).flatMap(({ drives }) => drives.filter(({ source }) => source === i));
      expect(ohmsOn(trial, i).map(({ ohms }) => ohms)).toEqual(drives.map(({ ohms }) => ohms));
    }
    const told = loads.flatMap((_, i) => levelsAt(trial, i));
    expect(told.length).toBe(all.length);
  });
});
