import type { Circuit, RfSource } from '../../circuit/circuit.ts';
import type { KeyDown } from '../../keydown/key-down.ts';
import { rfOfDit } from '../../keydown/rf-of-dit.ts';
import { ditMs } from '../../quantity/dit-ms.ts';
import { unitName } from '../../station/parts.ts';
import { controlName } from '../../trial/names.ts';
import { defineRule } from '../rule.ts';

/** A dit that loses more than this share of itself is heard as a shorter one. */
const largeShare = 0.25;

export const firstElementLost = defineRule({
  id: 'keying/first-element-lost',
  severity: 'doubt',
  title: 'The first dit is cut short',
  compares: 'how late RF starts after the key and how long it goes on after it, against a dit at the plan’s speed',
  why: 'A dit that is cut short is heard as none: E becomes silence, and the other station asks again.',
  advice: 'Shorten the delays before the transmitter, send more slowly, or let the keyer stretch the first element.',
  source: 'dit length by ITU-R M.1677-1 and the PARIS word (1200 ms / WPM); a quarter of a dit is common practice',
  follows: [],
  messages: {
    short:
      '{transmitter} makes {made ms} of RF from a dit of {dit ms} at {wpm} words a minute: it starts {late ms} after {control} and ends {tail ms} after it.',
  },
  looksAt: {
    press(keyDown, { station, trial: { circuit } }, report) {
      if (station.plan.mode !== 'keying') return;
      const dit = ditMs(station.plan.speedWpm);
      for (const source of sendersIn(circuit, keyDown)) {
        const rf = rfOfDit(keyDown, source, dit);
        if (!rf || dit - rf.madeMs <= largeShare * dit) continue;
        report({
          message: 'short',
          severity: 'doubt',
          at: [{ unit: source.unit }],
          values: {
            transmitter: unitName(station, source.unit),
            control: controlName(station, circuit, keyDown),
            made: rf.madeMs,
            dit,
            late: rf.lateMs,
            tail: rf.tailMs,
            wpm: station.plan.speedWpm,
          },
          weight: -rf.madeMs,
        });
      }
    },
  },
});

/** The sources that a press makes send. */
function sendersIn({ rf }: Circuit, { moments }: KeyDown): RfSource[] {
  const fields = moments.flatMap(({ reach }) => [...reach.rf.changed.values()].flatMap((region) => region.fields));
  return [...new Set(fields.map((field) => field.source))].flatMap((i) => rf.sources[i] ?? []);
}
