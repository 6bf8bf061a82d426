import { findCable, portName, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import type { JointPart } from '../../trial/own-parts.ts';
import { defineRule } from '../rule.ts';

type Mate = JointPart['origin'];

/** Up to this share over its rating a contact only gets warm. */
const warmShare = 1.25;

export const connectorOverloaded = defineRule({
  id: 'power/connector-overloaded',
  severity: 'danger',
  title: 'More current than the connector stands',
  compares: 'the current through each contact of each plug, in every moment, against the rating of both halves',
  why: 'A contact heats with the square of the current; its spring softens, its resistance grows, and it heats more.',
  advice: 'Use a connector of a higher rating, or share the current over two.',
  source: 'the ratings of the connectors, as the catalogue has them with their sources',
  follows: [
    'power/short-circuit',
    'power/return-missing',
    'power/fuse-will-open',
    'power/supplies-in-parallel',
    'power/reversed-polarity',
  ],
  messages: {
    over: '{amps A} goes through the {connector} of {cable} at {port} {moment}; it is made for {limit rated}.',
  },
  looksAt: {
    joint({ index, part: { origin } }, { station, trial }, report) {
      const weaker = weakerHalf(station, origin);
      if (!weaker || isScreen(station, origin)) return;
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const amps = Math.abs(reach.dc.ampsIn(index));
        if (amps <= weaker.amps) continue;
        const ref = { unit: origin.unit, port: origin.port };
        report({
          message: 'over',
          severity: amps > warmShare * weaker.amps ? 'danger' : 'doubt',
          at: [ref, { cable: origin.cable, end: origin.end }],
          values: {
            amps,
            connector: weaker.name,
            cable: findCable(station, origin.cable)?.number ?? origin.cable,
            port: portName(station, ref),
            limit: weaker.amps,
            moment: momentWords[name],
          },
          moment: name,
          weight: amps,
        });
      }
    },
  },
});

/** The shell or sleeve of a signal plug: what returns through it is looked at as current in a screen. */
function isScreen(station: Station, { unit, port, contact }: Mate): boolean {
  const { port: own, connector } = portOf(station, { unit, port });
  return own.class !== 'dc' && connector.contacts.find((c) => c.id === contact)?.role === 'return';
}

/** The half of a joint with the lower rating, or null where neither states one. */
function weakerHalf(station: Station, { cable: id, end, unit, port }: Mate): { name: string; amps: number } | null {
  const cable = findCable(station, id);
  const halves = [cable && plugOf(station, cable, end), portOf(station, { unit, port }).connector];
  return halves.reduce<{ name: string; amps: number } | null>((weaker, half) => {
    if (half?.amps === undefined || (weaker && weaker.amps <= half.amps)) return weaker;
    return { name: half.name, amps: half.amps };
  }, null);
}
