import { voltsBetween } from '../../keydown/feel.ts';
import { audioOf, signalName, signalPort } from '../../trial/audio-levels.ts';
import { instantsBetween } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** So many times what it stands is more than a nuisance. */
const harmful = 5;

export const dcOnAudio = defineRule({
  id: 'audio/dc-on-audio',
  severity: 'danger',
  title: 'The wrong DC on an audio contact',
  compares: 'DC on audio inputs and outputs, from microphone bias or a supply, against what they stand and need',
  why: 'A capsule without its bias is silent. A dynamic microphone or a transformer is magnetised or burnt by it, and an output stage works against it.',
  advice: 'Put a capacitor in the line, switch the bias off, or use the contact without bias.',
  source: 'the units’ own figures',
  follows: ['drawing/fits-but-should-not', 'drawing/does-not-mate', 'audio/mono-in-stereo'],
  messages: {
    dc: '{port} has {volts V} DC on it; it stands {limit V}.',
    starved: '{port} gets {volts V} of bias; its capsule needs {need V}.',
  },
  looksAt: {
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        const { sources, loads } = trial.circuit.signals;
        for (const source of sources) {
          const need = source.spec.minDcVolts;
          if (need === undefined) continue;
          const volts = voltsBetween(trial.receive.dc, source.node, source.reference) ?? 0;
          if (volts >= need) continue;
          // A capsule that is plugged in nowhere is no mistake.
          const isUsed = audioOf(trial).some(({ levels }) =>
            levels.some((l) => sources[l.source] === source && l.volts > 0),
          );
          if (!isUsed) continue;
          report({
            message: 'starved',
            severity: 'doubt',
            at: [signalPort(source)],
            values: { port: signalName(station, source), volts, need },
            hookup: hookup.id,
            moment: 'receive',
          });
        }
        for (const end of [...sources, ...loads]) {
          const limit = end.spec.maxDcVolts;
          if (limit === undefined) continue;
          for (const { name, reach } of instantsBetween(trial, end.node, end.reference)) {
            const volts = voltsBetween(reach.dc, end.node, end.reference) ?? 0;
            if (Math.abs(volts) <= limit) continue;
            report({
              message: 'dc',
              severity: Math.abs(volts) > harmful * limit ? 'danger' : 'doubt',
              at: [signalPort(end)],
              values: { port: signalName(station, end), volts, limit },
              hookup: hookup.id,
              moment: name,
              weight: Math.abs(volts),
            });
          }
        }
      }
    },
  },
});
