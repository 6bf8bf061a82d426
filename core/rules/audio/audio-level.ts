import type { SignalEnd } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { type AudioInput, inputsOfUnit } from '../../trial/audio-ends.ts';
import { type LevelAt, levelsAt, signalName, signalPort } from '../../trial/audio-levels.ts';
import { defineRule } from '../rule.ts';

/** Less than a thirtieth of what an input is made for: 30 dB down it drowns in hiss. */
const faintShare = 1 / 30;

/** Below this nothing comes. */
const leastVolts = 1e-6;

export const audioLevel = defineRule({
  id: 'audio/audio-level',
  severity: 'doubt',
  title: 'The audio level does not suit the input',
  compares: 'the most that an output makes at an input, after the divider of the impedances, against what it takes',
  why: 'A loudspeaker’s volts in a microphone input distort whatever the gain is set to, and a microphone in a line input is lost in hiss.',
  advice: 'Put a pad or an isolation transformer with a pad between them, or use the line output or input.',
  source: 'the units’ own levels; 30 dB below full level is common practice',
  follows: ['audio/mono-in-stereo', 'audio/two-outputs-joined'],
  messages: {
    over: '{source} makes up to {volts V} at {sink}, which distorts from {limit V}.',
    deaf: '{sink} gets nothing on its {contact} while its {other} does: one ear stays silent.',
    faint: '{source} makes no more than {volts V} at {sink}, which is made for {full V}.',
  },
  looksAt: {
    input({ index, end: to }, { station, trial }, report) {
      const sink = signalName(station, to);
      const levels = levelsFromOthers(trial, { index, end: to });
      const limit = to.spec.overloadVolts ?? Number.POSITIVE_INFINITY;
      for (const { name, from, volts } of levels) {
        if (volts <= limit) continue;
        report({
          message: 'over',
          severity: 'doubt',
          at: [signalPort(to), signalPort(from)],
          values: { source: signalName(station, from), sink, volts, limit },
          moment: name,
          weight: volts,
        });
      }
      const best = bestOf(levels);
      if (best === null) {
        const other = inputsOfUnit(trial.circuit, to.unit).find(
          (input) => isBeside(input.end, to) && bestOf(levelsFromOthers(trial, input)) !== null,
        );
        if (!other) return;
        const values = { sink, contact: contactOf(to), other: contactOf(other.end) };
        report({ message: 'deaf', severity: 'doubt', at: [signalPort(to)], values });
        return;
      }
      const { from, volts } = best;
      const full = to.spec.fullVolts;
      // Of what only passes on, the unit that begins the line is told.
      if (full === undefined || volts >= full * faintShare || from.spec.follows) return;
      report({
        message: 'faint',
        severity: 'doubt',
        at: [signalPort(to), signalPort(from)],
        values: { source: signalName(station, from), sink, volts, full },
        weight: -volts,
      });
    },
  },
});

/** A unit's own sound in its own input is its maker's business. */
const levelsFromOthers = (trial: Trial, { index, end }: AudioInput): LevelAt[] =>
  levelsAt(trial, index).filter(({ from }) => from.unit !== end.unit);

/** The strongest level, or null where there is none to speak of. */
const bestOf = (levels: readonly LevelAt[]): LevelAt | null =>
  levels.reduce<LevelAt | null>((best, level) => (level.volts > (best?.volts ?? leastVolts) ? level : best), null);

const contactOf = ({ spec }: SignalEnd<'audioLoad'>): string => spec.contact.split('.')[1] ?? '';

/** Two inputs of one plug: left and right. */
const isBeside = (one: SignalEnd<'audioLoad'>, two: SignalEnd<'audioLoad'>): boolean =>
  signalPort(one).port === signalPort(two).port;
