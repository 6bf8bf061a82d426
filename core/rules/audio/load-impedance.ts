import { levelsAt, ohmsOn, signalName, signalPort } from '../../trial/audio-levels.ts';
import { defineRule } from '../rule.ts';

export const loadImpedance = defineRule({
  id: 'audio/load-impedance',
  severity: 'doubt',
  title: 'What hangs on the audio output does not suit it',
  compares:
    'the ohms of all that hangs on an output against the least it drives, and the watts in a loudspeaker against its rating',
  why: 'An output that has to drive too few ohms distorts, overheats or switches off.',
  advice: 'Use a loudspeaker or headphones of the right impedance, or put them in series instead of side by side.',
  source: 'the units’ own figures',
  follows: ['audio/mono-in-stereo', 'audio/two-outputs-joined'],
  messages: {
    low: '{source} has to drive {ohms Ω}; it is made for {least Ω} and more.',
    watts: '{sink} gets up to {watts W} from {source}; it stands {limit W}.',
  },
  looksAt: {
    output({ index, end: from }, { station, trial }, report) {
      const least = from.spec.leastOhms;
      if (least === undefined) return;
      for (const { name, ohms } of ohmsOn(trial, index)) {
        // Joints and leads add to a loudspeaker’s ohms, rounding takes from them.
        if (ohms >= 0.95 * least) continue;
        report({
          message: 'low',
          severity: 'doubt',
          at: [signalPort(from)],
          values: { source: signalName(station, from), ohms, least },
          moment: name,
          weight: -ohms,
        });
      }
    },
    input({ index, end: to }, { station, trial }, report) {
      const limit = to.spec.watts;
      if (limit === undefined) return;
      for (const { name, from, volts } of levelsAt(trial, index)) {
        const watts = volts ** 2 / to.spec.ohms;
        if (watts <= 1.05 * limit) continue;
        report({
          message: 'watts',
          severity: 'doubt',
          at: [signalPort(to), signalPort(from)],
          values: { sink: signalName(station, to), source: signalName(station, from), watts, limit },
          moment: name,
          weight: watts,
        });
      }
    },
  },
});
