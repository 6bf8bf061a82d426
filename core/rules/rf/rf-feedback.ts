import { type ActorStates, isOpenGate, type RfEdge } from '../../circuit/circuit.ts';
import { instantsOfRegion } from '../instants.ts';
import { unitName } from '../look.ts';
import { type RfRegion, regionsOf } from '../regions.ts';
import { defineRule } from '../rule.ts';

export const rfFeedback = defineRule({
  id: 'rf/rf-feedback',
  severity: 'fault',
  title: 'An amplifier feeds itself',
  compares: 'the gain of each amplifier in use against what is lost on the way from its output back to its input',
  why: 'Where more comes back than is lost it oscillates: full output with nobody at the key, on a frequency of its own.',
  advice: 'Take out the way back: a receive line, a bypass or a second relay that does not isolate enough.',
  source: 'a loop oscillates where its gain is above 0 dB (Barkhausen)',
  follows: ['rf/changeover-reversed'],
  messages: {
    loop: '{amplifier} has {gain} dB of gain, and only {loss} dB are lost on the way from its output back to its input.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      for (const region of regionsOf(trial)) {
        const stages = region.edges.filter((e) => e.lossDb < 0 && e.origin.type === 'element');
        if (stages.length === 0) continue;
        for (const { name, reach } of instantsOfRegion(trial, region.number)) {
          for (const stage of stages) {
            if (!isOpenGate(stage.gate, reach.on) || stage.origin.type !== 'element') continue;
            const loss = leastLoss(region, reach.on, stage);
            if (loss >= -stage.lossDb) continue;
            const { unit } = stage.origin;
            report({
              message: 'loop',
              severity: 'fault',
              at: [{ unit }],
              values: {
                amplifier: unitName(station, unit),
                gain: (-stage.lossDb).toFixed(1),
                loss: loss.toFixed(1),
              },
              hookup: hookup.id,
              moment: name,
              weight: -stage.lossDb - loss,
            });
          }
        }
      }
    }
  },
});

/** Decibels lost on the best way from an amplifier's output back to its input, by any way but itself; endless where there is none. */
function leastLoss({ edges }: RfRegion, on: ActorStates, stage: RfEdge): number {
  const best = new Map([[stage.b, 0]]);
  // Few edges and no gain counted on the way: as many rounds as it takes.
  for (let changed = true; changed; ) {
    changed = false;
    for (const edge of edges) {
      const open = isOpenGate(edge.gate, on);
      const lossDb = open ? Math.max(0, edge.lossDb) : edge.isolationDb;
      if (edge === stage || lossDb === null) continue;
      const ways: (readonly [number, number])[] = [[edge.a, edge.b]];
      if (!edge.oneWay) ways.push([edge.b, edge.a]);
      for (const [from, to] of ways) {
        const there = (best.get(from) ?? Number.POSITIVE_INFINITY) + lossDb;
        if (there >= (best.get(to) ?? Number.POSITIVE_INFINITY) - 1e-9) continue;
        best.set(to, there);
        changed = true;
      }
    }
  }
  return best.get(stage.a) ?? Number.POSITIVE_INFINITY;
}
