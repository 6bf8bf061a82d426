import type { SignalEnd } from '../../circuit/circuit.ts';
import { audioOf, signalName, signalPort } from '../../trial/audio-levels.ts';
import { defineRule } from '../rule.ts';

/** Less than a thirtieth of what an input is made for: 30 dB down it drowns in hiss. */
const faintShare = 1 / 30;

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
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        const { sources, loads } = trial.circuit.signals;
        const best = new Map<number, { source: number; volts: number }>();
        for (const { name, levels } of audioOf(trial)) {
          for (const { source, load, volts } of levels) {
            const [from, to] = [sources[source], loads[load]];
            if (!from || !to || from.unit === to.unit) continue;
            if (volts > (best.get(load)?.volts ?? 1e-6)) best.set(load, { source, volts });
            const limit = to.spec.overloadVolts;
            if (limit === undefined || volts <= limit) continue;
            report({
              message: 'over',
              severity: 'doubt',
              at: [signalPort(to), signalPort(from)],
              values: { source: signalName(station, from), sink: signalName(station, to), volts, limit },
              hookup: hookup.id,
              moment: name,
              weight: volts,
            });
          }
        }
        for (const [load, to] of loads.entries()) {
          const sibling = loads.findIndex((l, i) => l.unit === to.unit && i !== load && best.has(i) && isBeside(l, to));
          const other = loads[sibling];
          if (best.has(load) || !other) continue;
          report({
            message: 'deaf',
            severity: 'doubt',
            at: [signalPort(to)],
            values: { sink: signalName(station, to), contact: contactOf(to), other: contactOf(other) },
            hookup: hookup.id,
          });
        }
        for (const [load, { source, volts }] of best) {
          const [from, to] = [sources[source], loads[load]];
          const full = to?.spec.fullVolts;
          // Of what only passes on, the unit that begins the line is told.
          if (!from || !to || full === undefined || volts >= full * faintShare || from.spec.follows) continue;
          report({
            message: 'faint',
            severity: 'doubt',
            at: [signalPort(to), signalPort(from)],
            values: { source: signalName(station, from), sink: signalName(station, to), volts, full },
            hookup: hookup.id,
            weight: -volts,
          });
        }
      }
    },
  },
});

const contactOf = ({ spec }: SignalEnd<'audioLoad'>): string => spec.contact.split('.')[1] ?? '';

/** Two inputs of one plug: left and right. */
const isBeside = (one: SignalEnd<'audioLoad'>, two: SignalEnd<'audioLoad'>): boolean =>
  signalPort(one).port === signalPort(two).port;
