import { ditMs } from '../../quantity/dit-ms.ts';
import { unitName } from '../../station/parts.ts';
import { listeningIn } from '../../trial/rf/listening.ts';
import { defineRule } from '../rule.ts';

export const breakIn = defineRule({
  id: 'keying/break-in',
  severity: 'note',
  title: 'What is heard while sending',
  compares:
    'how long after the key is let go a receiver hears its antenna again, against the pauses at the plan’s speed',
  why: 'Whoever wants to break in is heard in these pauses only.',
  advice: 'Shorter hang times of mute and changeover, or a slower speed, let more through.',
  source: 'ITU-R M.1677-1: a pause is one dit within a letter, three between letters, seven between words',
  follows: [],
  messages: {
    dit: '{receiver} is heard between dits at {wpm} words a minute: it is open again {again ms} after the key, and a dit lasts {dit ms}.',
    letter:
      '{receiver} is heard between letters at {wpm} words a minute, not between dits: it is open again {again ms} after the key, and a dit lasts {dit ms}.',
    word: '{receiver} is heard between words only at {wpm} words a minute: it is open again {again ms} after the key, and a dit lasts {dit ms}.',
    none: '{receiver} is not heard before the end at {wpm} words a minute: it is open again {again ms} after the key, and a dit lasts {dit ms}.',
  },
  looksAt: {
    press(keyDown, { station, trial }, report) {
      if (station.plan.mode !== 'keying' || keyDown.controls.length > 1 || !keyDown.settled) return;
      const dit = ditMs(station.plan.speedWpm);
      for (const { receiver, againMs, pause } of listeningIn(trial, keyDown, dit)) {
        report({
          message: pause,
          severity: 'note',
          at: [{ unit: receiver.unit }],
          values: { receiver: unitName(station, receiver.unit), wpm: station.plan.speedWpm, again: againMs, dit },
          weight: againMs,
        });
      }
    },
  },
});
