import { type Circuit, isOpenGate, type RfEdge, type RfLoad, type RfSource } from '../../circuit/circuit.ts';
import { swapAt } from '../../fixes/plugs.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { edgesAround } from '../../rf/spread.ts';
import { cablesAt, unitName } from '../../station/parts.ts';
import type { Cable, Hookup, Station } from '../../station/schema/schema.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { isSending } from '../../trial/parts.ts';
import type { RfRegion } from '../../trial/rf/regions.ts';
import { endGroups } from '../../trial/rf/rf-ways.ts';
import { defineRule, fixed } from '../rule.ts';

export const changeoverReversed = defineRule({
  id: 'rf/changeover-reversed',
  severity: 'danger',
  title: 'The changeover is wired the wrong way round',
  compares: 'who is on the antenna in receive and who in sending',
  why: 'The transmitter sends into an open contact, and the receiver hangs on the antenna just when it must not.',
  advice: 'Swap the two cables at the changeover.',
  source: 'common practice',
  judgesDrawing: true,
  follows: [],
  messages: {
    reversed:
      'In receive {changeover} has {transmitter} on the antenna, and in sending {receiver}: {cables} are swapped there.',
    never:
      '{receiver} is never on the antenna, and {transmitter} always is: {cables} are swapped at {changeover}, which stays as it is.',
  },
  looksAt: {
    region(region, { station, hookup, trial }, report) {
      const { number, sources, receivers } = region;
      const pairs = sources.flatMap((source) => receivers.map((receiver) => ({ source, receiver })));
      for (const { name, reach } of instantsOfRegion(trial, number)) {
        for (const { source, receiver } of pairs) {
          if (name !== 'sending' || receiver.unit === source.unit) continue;
          const reversed = isReversed(trial, region, reach, source, receiver);
          const stuck = reversed ? [] : stuckUnits(trial, region, reach, source, receiver);
          for (const changeover of reversed ? changedUnits(trial, region, reach) : stuck) {
            const cables = cablesBetween(station, hookup, trial.circuit, region, changeover, [
              source.port,
              receiver.port,
            ]);
            if (cables.length < 2) continue;
            report({
              message: reversed ? 'reversed' : 'never',
              severity: reversed ? 'danger' : 'fault',
              at: [{ unit: changeover }, ...cables.map((c) => ({ cable: c.id }))],
              values: {
                changeover: unitName(station, changeover),
                transmitter: unitName(station, source.unit),
                receiver: unitName(station, receiver.unit),
                cables: cables.map((c) => c.number).join(' and '),
              },
              touches: [`unit:${source.unit}`, `unit:${receiver.unit}`],
              ...fixed(cables[0] && cables[1] && swapAt(changeover, cables[0], cables[1])),
            });
          }
        }
      }
    },
  },
});

function isReversed(trial: Trial, region: RfRegion, sending: Reach, source: RfSource, receiver: RfLoad): boolean {
  // On the antenna, and the other one not.
  const isAlone = (reach: Reach, on: RfSource | RfLoad, off: RfSource | RfLoad) => {
    const ends = endGroups(region, reach);
    return ends.has(reach.rf.groupOf(on.port)) && !ends.has(reach.rf.groupOf(off.port));
  };
  return isAlone(trial.receive, source, receiver) && isAlone(sending, receiver, source);
}

/**
 * Powered units in whose idle position a sending transmitter is on the antenna, and which never turn to the side on
 * which the receiver is: one that senses RF feels too little of it there.
 */
function stuckUnits(trial: Trial, region: RfRegion, sending: Reach, source: RfSource, receiver: RfLoad): string[] {
  const { receive, circuit } = trial;
  const groupOf = (port: number) => sending.rf.groupOf(port);
  if (!isSending(source, sending) || groupOf(source.port) === groupOf(receiver.port)) return [];
  if (!endGroups(region, sending).has(groupOf(source.port))) return [];
  const units = region.edges.flatMap(({ a, b, gate, origin }) => {
    const isSelected = isOpenGate(gate, receive.on) || isOpenGate(gate, sending.on);
    // A hand switch is where somebody left it; only what an actor moves can be stuck.
    const moves = gate.some(({ actor }) => circuit.actors[actor] !== undefined);
    if (origin.type !== 'element' || !moves || isSelected) return [];
    const power = circuit.actorOf.get(`${origin.unit}.powered`);
    if (power !== undefined && sending.on[power] !== 1) return [];
    const ends = [groupOf(a), groupOf(b)];
    return ends.includes(groupOf(source.port)) && ends.includes(groupOf(receiver.port)) ? [origin.unit] : [];
  });
  return [...new Set(units)];
}

/** Units with a path that is selected in one of the two states and not in the other. */
function changedUnits(trial: Trial, region: RfRegion, sending: Reach): string[] {
  const units = region.edges.flatMap((edge) => {
    const changed = isOpenGate(edge.gate, trial.receive.on) !== isOpenGate(edge.gate, sending.on);
    return changed && edge.origin.type === 'element' ? [edge.origin.unit] : [];
  });
  return [...new Set(units)];
}

/** The cables at a unit that lead on to one of these ports without coming back through the unit. */
function cablesBetween(
  station: Station,
  hookup: Hookup,
  circuit: Circuit,
  region: RfRegion,
  unit: string,
  ports: readonly number[],
): Cable[] {
  const reached = ports.flatMap((port) => [...reachable(circuit, region, unit, port)]);
  const ends = new Set(reached.map((port) => circuit.rf.ports[port]));
  const isEnd = (end: Cable['a']) => ends.has(`${end.unit}.${end.port}`);
  return cablesAt(station, hookup, unit).filter(
    (c) => (c.a.unit === unit && isEnd(c.b)) || (c.b.unit === unit && isEnd(c.a)),
  );
}

/** Ports that hang on this one by cables and by whatever is in the units between, one unit left out. */
function reachable(circuit: Circuit, region: RfRegion, without: string, start: number): Set<number> {
  const around = edgesAround(region.edges);
  const seen = new Set([start]);
  const open = [start];
  for (let port = open.pop(); port !== undefined; port = open.pop()) {
    for (const i of around.get(port) ?? []) {
      const { a, b } = region.edges[i] as RfEdge;
      const other = a === port ? b : a;
      if (seen.has(other) || rfPortRef(circuit, other).unit === without) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}
