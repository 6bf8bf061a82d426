import { metalGroups } from '../../circuit/metal-groups.ts';
import { outputsJoinedTo } from '../../trial/audio-ends.ts';
import { signalName, signalPort } from '../../trial/audio-levels.ts';
import { defineRule } from '../rule.ts';

/** Below this an output drives its neighbour hard. */
const strongOhms = 1000;

export const twoOutputsJoined = defineRule({
  id: 'audio/two-outputs-joined',
  severity: 'danger',
  title: 'Two audio outputs on one wire',
  compares: 'outputs whose contacts metal joins, and outputs that have no side on the box’s metal',
  why: 'Each output is a short for the other: the audio is gone, and amplifiers for loudspeakers overheat.',
  advice: 'Switch between them, or join them through a resistor each (some hundred ohms for headphones).',
  source: 'common practice',
  follows: ['audio/mono-in-stereo', 'drawing/fits-but-should-not'],
  messages: {
    joined: '{one} and {two} are both outputs, and they are joined.',
    bridged: '{port} has its signal on both contacts, and one of them is joined to the metal of the box.',
  },
  looksAt: {
    output({ end }, { station, trial }, report) {
      const { circuit } = trial;
      const { spec, node, reference, unit } = end;
      if (spec.reference !== undefined && spec.leastOhms !== undefined) {
        const metal = circuit.nodeOf.get(`${unit}.chassis`);
        const groupOf = metalGroups(circuit);
        if (metal !== undefined && [node, reference].some((n) => groupOf(n) === groupOf(metal)))
          report({
            message: 'bridged',
            severity: 'danger',
            at: [signalPort(end)],
            values: { port: signalName(station, end) },
          });
      }
      if (spec.ohms > strongOhms) return;
      const [first] = outputsJoinedTo(circuit, node).filter((other) => other.spec.ohms <= strongOhms);
      if (!first || first === end) return;
      report({
        message: 'joined',
        severity: spec.leastOhms !== undefined || first.spec.leastOhms !== undefined ? 'danger' : 'doubt',
        at: [signalPort(end), signalPort(first)],
        values: { one: signalName(station, first), two: signalName(station, end) },
      });
    },
  },
});
