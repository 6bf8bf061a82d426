import type { RfSource } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { cablesAt, portName, unitName } from '../../station/parts.ts';
import type { Hookup, Station } from '../../station/schema/schema.ts';
import { portAt } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { ownedBy } from '../../trial/owned-by.ts';
import type { RfRegion } from '../../trial/rf/regions.ts';
import { fieldOf } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const amplifierNeverSwitched = defineRule({
  id: 'keying/amplifier-never-switched',
  severity: 'fault',
  title: 'The amplifier stays idle while its station sends',
  compares: 'each powered amplifier through which a transmitter sends, and whether it ever goes over',
  why: 'The power goes past it: what leaves the station is the transmitter’s own, however warm the amplifier is.',
  advice: 'Lay its key line to the transmitter’s amplifier jack or to the sequencer, and see that this closes it.',
  source: 'common practice',
  follows: [
    'rf/changeover-reversed',
    'power/not-powered',
    'drawing/port-needed-open',
    'drawing/does-not-mate',
    'keying/nothing-keys-it',
  ],
  messages: {
    idle: '{transmitter} sends through {amplifier}, which stays idle: what is plugged into {line} never keys it.',
    open: '{transmitter} sends past {amplifier}, which has power and is never keyed: nothing is plugged into {line}.',
  },
  looksAt: {
    region(region, { station, hookup, trial }, report) {
      for (const source of region.sources) {
        for (const unit of idleAmplifiers(trial, region, source)) {
          const line = keyPort(trial, unit);
          const plugged = line !== null && cablesAt(station, hookup, unit, line).length > 0;
          report({
            message: plugged ? 'idle' : 'open',
            severity: plugged ? 'fault' : 'doubt',
            at: [{ unit, ...(line !== null && { port: line }) }],
            values: {
              transmitter: unitName(station, source.unit),
              amplifier: unitName(station, unit),
              line: line === null ? 'its key line' : portName(station, { unit, port: line }),
            },
            touches: touchesOf(station, hookup, unit, source),
          });
        }
      }
    },
  },
});

/** Units with a stage that amplifies, which a source's power passes in some sending moment and which are on in none. */
function idleAmplifiers(trial: Trial, region: RfRegion, source: RfSource): string[] {
  const { circuit } = trial;
  const stages = region.edges.filter((e) => e.oneWay && e.lossDb < 0 && e.gate.length > 0);
  if (stages.length === 0) return [];
  const sendings = instantsOfRegion(trial, region.number).filter(({ reach }) => fieldOf(trial, reach, source));
  const units = new Set(stages.flatMap(({ origin }) => (origin.type === 'element' ? [origin.unit] : [])));
  // What amplifies towards the transmitter is for listening.
  const isOnWay = (unit: string) => {
    const entries = new Set(sendings.flatMap(({ reach }) => entriesOf(trial, reach, source, unit)));
    return stages.some(({ origin, a }) => origin.type === 'element' && origin.unit === unit && entries.has(a));
  };
  const isIdle = (unit: string) => {
    const passing = sendings.filter(({ reach }) => passes(trial, reach, source, unit));
    const power = circuit.actorOf.get(`${unit}.powered`);
    const isPowered = passing.some(({ reach }) => power === undefined || reach.on[power] === 1);
    return passing.length > 0 && isPowered && !sendings.some(({ reach }) => amplifies(trial, reach, source, unit));
  };
  return [...units].filter((unit) => isOnWay(unit) && isIdle(unit));
}

/** Whether a source's power comes to a port of a unit by a way through the unit itself. */
const passes = (trial: Trial, reach: Reach, source: RfSource, unit: string): boolean =>
  edgesUsed(trial, reach, source, unit).length > 0;

const amplifies = (trial: Trial, reach: Reach, source: RfSource, unit: string): boolean =>
  edgesUsed(trial, reach, source, unit).some((edge) => edge.lossDb < 0);

/** The ports by which a source's power goes into what a unit does with it. */
const entriesOf = (trial: Trial, reach: Reach, source: RfSource, unit: string): number[] =>
  [...(fieldOf(trial, reach, source)?.selected.values() ?? [])].flatMap(({ edge, from }) => {
    const origin = edge === null ? undefined : trial.circuit.rf.edges[edge]?.origin;
    return from !== null && origin?.type === 'element' && origin.unit === unit ? [from] : [];
  });

function edgesUsed(trial: Trial, reach: Reach, source: RfSource, unit: string) {
  const field = fieldOf(trial, reach, source);
  return [...(field?.selected.values() ?? [])].flatMap((arrival) => {
    const edge = arrival.edge === null ? undefined : trial.circuit.rf.edges[arrival.edge];
    return edge?.origin.type === 'element' && edge.origin.unit === unit ? [edge] : [];
  });
}

/** The port at which an actor of the unit feels that it has to go over, or null. */
function keyPort(trial: Trial, unit: string): string | null {
  for (const actor of ownedBy(trial.circuit, unit).actors) {
    if (actor.does !== 'changesOver') continue;
    for (const feel of actor.feels) {
      if (feel.type !== 'voltageBelow' && feel.type !== 'voltageAbove') continue;
      const port = portAt(trial.circuit, feel.node)?.port;
      if (port !== undefined) return port;
    }
  }
  return null;
}

const touchesOf = (station: Station, hookup: Hookup, unit: string, source: RfSource): string[] => [
  `unit:${source.unit}`,
  ...cablesAt(station, hookup, unit).flatMap((c) => [`cable:${c.id}`, `unit:${c.a.unit}`, `unit:${c.b.unit}`]),
];
