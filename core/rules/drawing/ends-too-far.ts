import { findUnit, unitOf } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const endsTooFar = defineRule({
  id: 'drawing/ends-too-far',
  severity: 'doubt',
  title: 'The cable is too short for where its ends are',
  compares: 'the length of each cable against the distance of its two units, where the drawing is to scale',
  why: 'A lead that does not reach is found when everything is screwed down.',
  advice: 'Make it longer, or move the units; count the way around the desk too.',
  source: 'the drawing’s own scale',
  judgesDrawing: true,
  follows: [],
  messages: { short: '{cable} is {length m} long; {a} and {b} are {distance m} apart.' },
  looksAt: {
    // Where units stand and how long a cable is does not depend on a hook-up.
    station({ station }, report) {
      const { metresPerUnit } = station.settings;
      if (metresPerUnit === undefined) return;
      for (const cable of station.cables) {
        const [a, b] = [findUnit(station, cable.a.unit), findUnit(station, cable.b.unit)];
        if (!a || !b) continue;
        const [x, y] = [a.position.x - b.position.x, a.position.y - b.position.y];
        const distance = Math.hypot(x, y) * metresPerUnit;
        if (distance <= cable.lengthM) continue;
        report({
          message: 'short',
          severity: 'doubt',
          at: [{ cable: cable.id }],
          values: {
            cable: cable.number,
            length: cable.lengthM,
            a: unitOf(station, a.id).name,
            b: unitOf(station, b.id).name,
            distance,
          },
        });
      }
    },
  },
});
