import { cablesIn, portName, portOf } from '../../station/parts.ts';
import type { Connector } from '../../station/schema/connector.ts';
import { defineRule } from '../rule.ts';

/** Posts, studs and terminals take several leads at once. */
const takesSeveral: readonly Connector['face'][] = ['posts', 'ring', 'earth', 'wire'];

export const crowdedPort = defineRule({
  id: 'drawing/crowded-port',
  severity: 'fault',
  title: 'Two cables in one port',
  compares: 'the cables drawn into each port in the same hook-up',
  why: 'A jack takes one plug.',
  advice: 'Put one of them into another hook-up, or a splitter or strip between.',
  source: 'common practice',
  follows: [],
  messages: { crowded: '{cables} are in one port, {port}, which takes one plug.' },
  looksAt: {
    station({ station, hookups }, report) {
      for (const { hookup } of hookups) {
        const at = new Map<string, { ref: { unit: string; port: string }; numbers: string[] }>();
        for (const cable of cablesIn(station, hookup)) {
          for (const ref of [cable.a, cable.b]) {
            const key = `${ref.unit}.${ref.port}`;
            const entry = at.get(key) ?? { ref, numbers: [] };
            entry.numbers.push(cable.number);
            at.set(key, entry);
          }
        }
        for (const { ref, numbers } of at.values()) {
          if (numbers.length < 2 || takesSeveral.includes(portOf(station, ref).connector.face)) continue;
          const values = { cables: inWords(numbers), port: portName(station, ref) };
          report({ message: 'crowded', severity: 'fault', at: [ref], values, hookup: hookup.id });
        }
      }
    },
  },
});

/** `D1 and D2`, `D1, D2 and D3`. */
const inWords = (names: readonly string[]): string => `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
