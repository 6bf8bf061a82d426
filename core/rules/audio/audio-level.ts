import type { SignalEnd } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { type AudioInput, inputsOfUnit } from '../../trial/audio-ends.ts';
import { type LevelAt, levelsAt, levelsFrom, signalName, signalPort } from '../../trial/audio-levels.ts';
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
    output({ index, end: from }, { station, trial }, report) {
      for (const { name, to, volts } of levelsFrom(trial, index)) {
        const limit = to.spec.overloadVolts;
        if (limit === undefined || volts <= limit || from.unit === to.unit) continue;
        report({
          message: 'over',
          severity: 'doubt',
          at: [signalPort(to), signalPort(from)],
          values: { source: signalName(station, from), sink: signalName(station, to), volts, limit },
          moment: name,
          weight: volts,
        });
      }
    },
    port({ unit, port }, { station, trial }, report) {
      const inputs = inputsOfUnit(trial.circuit, unit.id).filter(({ end }) => signalPort(end).port === port.id);
      const heard = inputs.find((input) => bestOf(trial, input));
      if (!heard) return;
      for (const input of inputs) {
        if (bestOf(trial, input)) continue;
        const { end } = input;
        const values = { sink: signalName(station, end), contact: contactOf(end), other: contactOf(heard.end) };
        report({ message: 'deaf', severity: 'doubt', at: [signalPort(end)], values });
      }
    },
    input(input, { station, trial }, report) {
      const { end: to } = input;
      const best = bestOf(trial, input);
      if (!best) return;
      const { from, volts } = best;
      const full = to.spec.fullVolts;
      // Of what only passes on, the unit that begins the line is told.
      if (full === undefined || volts >= full * faintShare || from.spec.follows) return;
      report({
        message: 'faint',
        severity: 'doubt',
        at: [signalPort(to), signalPort(from)],
        values: { source: signalName(station, from), sink: signalName(station, to), volts, full },
        weight: -volts,
      });
    },
  },
});

/** The strongest level that another unit makes at an input, or null where there is none to speak of. */
const bestOf = (trial: Trial, { index, end }: AudioInput): LevelAt | null =>
  levelsAt(trial, index)
    .filter(({ from }) => from.unit !== end.unit)
    .reduce<LevelAt | null>((best, level) => (level.volts > (best?.volts ?? leastVolts) ? level : best), null);

const contactOf = ({ spec }: SignalEnd<'audioLoad'>): string => spec.contact.split('.')[1] ?? '';
