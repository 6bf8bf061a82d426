import { voltsBetween } from '../../keydown/feel.ts';
import { levelsFrom, signalName, signalPort } from '../../trial/audio-levels.ts';
import { instantsBetween, momentWords } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

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
    loop: 'The supply’s current leaves {volts V} between {source} and {sink} {moment}: {share %} of the {full V} that the input is made for.',
  },
  looksAt: {
    output({ index, end: from }, { station, trial }, report) {
      for (const to of new Set(levelsFrom(trial, index).map((level) => level.to))) {
        const full = to.spec.fullVolts;
        if (full === undefined || from.unit === to.unit) continue;
        for (const { name, reach } of instantsBetween(trial, from.reference, to.reference)) {
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
              moment: momentWords[name],
            },
            moment: name,
            weight: hum,
          });
        }
      }
    },
  },
});
