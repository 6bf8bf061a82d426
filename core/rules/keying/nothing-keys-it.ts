import { cablesAt, isPutAside, unitName } from '../../station/parts.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { controlName } from '../../trial/names.ts';
import { isSending } from '../../trial/parts.ts';
import { regionsOf } from '../../trial/rf/regions.ts';
import { defineRule } from '../rule.ts';

export const nothingKeysIt = defineRule({
  id: 'keying/nothing-keys-it',
  severity: 'fault',
  title: 'Nothing makes the transmitter send',
  compares: 'whether any control of the station makes each transmitter send',
  why: 'The station looks ready, and the key does nothing.',
  advice:
    'Lay the key line from the key, keyer or changeover to the transmitter’s key jack, and see that every unit on the way has power.',
  source: 'common practice',
  follows: [
    'power/reversed-polarity',
    'power/short-circuit',
    'power/not-powered',
    'drawing/port-needed-open',
    'drawing/does-not-mate',
    'drawing/fits-but-should-not',
  ],
  messages: {
    silent: '{transmitter} never sends, whichever control is pressed ({controls}).',
    noControl: '{transmitter} never sends: the station has no key, switch or other control.',
  },
  looksAt: {
    // Which controls there are at all is the hook-up's to say.
    hookup(hookup, { station, trial }, report) {
      const controls = trial.keyDowns
        .filter((k) => k.controls.length === 1)
        .map((k) => controlName(station, trial.circuit, k));
      const sources = regionsOf(trial).flatMap((region) => region.sources.map((source) => ({ source, region })));
      for (const { source, region } of sources) {
        if (isPutAside(station, hookup, source.unit)) continue;
        if (instantsOfRegion(trial, region.number).some(({ reach }) => isSending(source, reach))) continue;
        const near = cablesAt(station, hookup, source.unit);
        report({
          message: controls.length > 0 ? 'silent' : 'noControl',
          severity: 'fault',
          at: [{ unit: source.unit }],
          values: { transmitter: unitName(station, source.unit), controls: controls.join(', ') },
          touches: near.flatMap((c) => [`cable:${c.id}`, `unit:${c.a.unit}`, `unit:${c.b.unit}`]),
        });
      }
    },
  },
});
