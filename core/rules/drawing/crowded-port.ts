import { cablesAt, portName, portOf } from '../../station/parts.ts';
import type { Connector } from '../../station/schema/connector.ts';
import type { PortRef } from '../../station/schema/schema.ts';
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
    cable(cable, { station, hookup }, report) {
      for (const ref of [cable.a, cable.b]) {
        const here = cablesAt(station, hookup, ref.unit, ref.port);
        // The first cable tells of them all.
        if (here[0] !== cable || takesSeveral.includes(portOf(station, ref).connector.face)) continue;
        const isHere = (end: PortRef) => end.unit === ref.unit && end.port === ref.port;
        const numbers = here.flatMap((c) => [c.a, c.b].filter(isHere).map(() => c.number));
        if (numbers.length < 2) continue;
        const values = { cables: inWords(numbers), port: portName(station, ref) };
        report({ message: 'crowded', severity: 'fault', at: [ref], values });
      }
    },
  },
});

/** `D1 and D2`, `D1, D2 and D3`. */
const inWords = (names: readonly string[]): string => `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
