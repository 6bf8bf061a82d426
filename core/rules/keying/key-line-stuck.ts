import { wattsFromDbm } from '../../quantity/decibel.ts';
import { cablesAt, unitName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const keyLineStuck = defineRule({
  id: 'keying/key-line-stuck',
  severity: 'danger',
  title: 'The station sends by itself',
  compares: 'what sends while nobody is at any control',
  why: 'It sends from the moment it is switched on: into whatever is connected, unnoticed, and without a pause to cool.',
  advice: 'Find what holds the key line down: a mono plug in a stereo jack, a closed contact, a line with no pull-up.',
  source: 'common practice',
  follows: ['drawing/fits-but-should-not', 'audio/mono-in-stereo', 'power/reversed-polarity', 'drawing/does-not-mate'],
  messages: { stuck: '{transmitter} sends {watts W} with every control at rest.' },
  looksAt: {
    // Whoever holds a key down may be anywhere in the station.
    hookup(hookup, { station, trial: { circuit, receive } }, report) {
      if (receive.rf.fields.length === 0) return;
      const held = circuit.actors.filter((a, i) => a.does === 'keys' && receive.on[i] === 1);
      for (const { source } of receive.rf.fields) {
        const { unit, spec } = circuit.rf.sources[source] ?? {};
        if (unit === undefined || spec === undefined) continue;
        const near = [unit, ...held.map((a) => a.unit)];
        report({
          message: 'stuck',
          severity: 'danger',
          at: [{ unit }],
          values: { transmitter: unitName(station, unit), watts: wattsFromDbm(spec.dbm) },
          moment: 'receive',
          touches: near.flatMap((u) => [`unit:${u}`, ...cablesAt(station, hookup, u).map((c) => `cable:${c.id}`)]),
        });
      }
    },
  },
});
