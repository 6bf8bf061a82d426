import { voltsBetween } from '../../keydown/feel.ts';
import { defineRule } from '../rule.ts';
import { audioOf, signalName, signalPort } from './levels.ts';

/** Hum 40 dB below full level is heard. */
const heardShare = 0.01;

export const audioGroundLoop = defineRule({
  id: 'audio/audio-ground-loop',
  severity: 'doubt',
  title: 'Supply current in an audio screen',
  compares: 'DC between the two references of an audio line against what its input is made for',
  why: 'What drops along the screen adds to the signal: hum in receive, and a carrier that growls with the current it draws itself.',
  advice: 'Put an isolation transformer into the audio line, or give the two units one thick common minus.',
  source: 'the voltages worked out for both ends; 1 % (40 dB) of full level is common practice',
  follows: ['power/return-missing', 'power/return-through-shield', 'power/short-circuit', 'power/reversed-polarity'],
  messages: {
    loop: '{volts V} of the supply’s current stand between {source} and {sink} in {moment}: {share %} of the {full V} that the input is made for.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      const { sources, loads } = trial.circuit.signals;
      for (const { name, reach, levels } of audioOf(trial)) {
        for (const { source, load, volts } of levels) {
          const [from, to] = [sources[source], loads[load]];
          const full = to?.spec.fullVolts;
          if (!from || !to || full === undefined || from.unit === to.unit || volts < 1e-6) continue;
          const hum = Math.abs(voltsBetween(reach.dc, from.reference, to.reference) ?? 0);
          if (hum <= heardShare * full) continue;
          report({
            message: 'loop',
            severity: 'doubt',
            at: [signalPort(to), signalPort(from)],
            values: {
              source: signalName(station, from),
              sink: signalName(station, to),
              volts: hum,
              share: hum / full,
              full,
              moment: name,
            },
            hookup: hookup.id,
            moment: name,
            weight: hum,
          });
        }
      }
    }
  },
});
