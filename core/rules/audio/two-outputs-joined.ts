import type { SignalEnd } from '../../circuit/circuit.ts';
import { metalGroups } from '../../circuit/metal-groups.ts';
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
    hookup(_, { station, trial }, report) {
      const { circuit } = trial;
      const groupOf = metalGroups(circuit);
      const first = new Map<number, SignalEnd<'audioSource'>>();
      const named = [...circuit.signals.sources].sort((a, b) => nameOf(a).localeCompare(nameOf(b)));
      for (const source of named) {
        const { spec, node, reference, unit } = source;
        if (spec.reference !== undefined && spec.leastOhms !== undefined) {
          const metal = circuit.nodeOf.get(`${unit}.chassis`);
          if (metal !== undefined && [node, reference].some((n) => groupOf(n) === groupOf(metal)))
            report({
              message: 'bridged',
              severity: 'danger',
              at: [signalPort(source)],
              values: { port: signalName(station, source) },
            });
        }
        if (spec.ohms > strongOhms) continue;
        const group = groupOf(node);
        const other = first.get(group);
        if (!other) first.set(group, source);
        else
          report({
            message: 'joined',
            severity: spec.leastOhms !== undefined || other.spec.leastOhms !== undefined ? 'danger' : 'doubt',
            at: [signalPort(source), signalPort(other)],
            values: { one: signalName(station, other), two: signalName(station, source) },
          });
      }
    },
  },
});

const nameOf = ({ unit, spec }: SignalEnd<'audioSource'>): string => `${unit} ${spec.contact}`;
