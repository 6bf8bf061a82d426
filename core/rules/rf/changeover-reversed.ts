import { type Circuit, isOpenGate, type RfLoad, type RfSource } from '../../circuit/circuit.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { cablesIn } from '../../station/parts.ts';
import type { Cable, Hookup, Station } from '../../station/schema.ts';
import { isSending, receiversOf, rfPortRef, sendingsOf, sourcesOf, unitName } from '../look.ts';
import { defineRule } from '../rule.ts';
import { endGroups } from './ways.ts';

export const changeoverReversed = defineRule({
  id: 'rf/changeover-reversed',
  severity: 'danger',
  title: 'The changeover is wired the wrong way round',
  compares: 'who is on the antenna in receive and who in sending',
  why: 'The transmitter sends into an open contact, and the receiver hangs on the antenna just when it must not.',
  advice: 'Swap the two cables at the changeover.',
  source: 'common practice',
  follows: [],
  messages: {
    reversed:
      'In receive {changeover} has {transmitter} on the antenna, and in sending {receiver}: {cables} are swapped there.',
    never:
      '{receiver} is never on the antenna, and {transmitter} always is: {cables} are swapped at {changeover}, which stays as it is.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      for (const { reach } of sendingsOf(trial)) {
        for (const source of sourcesOf(trial)) {
          for (const receiver of receiversOf(trial)) {
            if (receiver.unit === source.unit) continue;
            const reversed = isReversed(trial, reach, source, receiver);
            const stuck = reversed ? [] : stuckUnits(trial, reach, source, receiver);
            for (const changeover of reversed ? changedUnits(trial, reach) : stuck) {
              const cables = cablesBetween(station, hookup, trial.circuit, changeover, [source.port, receiver.port]);
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
                hookup: hookup.id,
                touches: [`unit:${source.unit}`, `unit:${receiver.unit}`],
              });
            }
          }
        }
      }
    }
  },
});

function isReversed(trial: Trial, sending: Reach, source: RfSource, receiver: RfLoad): boolean {
  const onEnd = (reach: Reach, port: number) => endGroups(trial, reach).has(reach.rf.group[port] as number);
  const { receive } = trial;
  const before = onEnd(receive, source.port) && !onEnd(receive, receiver.port);
  return before && onEnd(sending, receiver.port) && !onEnd(sending, source.port);
}

/**
 * Powered units in whose idle position a sending transmitter is on the antenna, and which never turn to the side on
 * which the receiver is: one that senses RF feels too little of it there.
 */
function stuckUnits(trial: Trial, sending: Reach, source: RfSource, receiver: RfLoad): string[] {
  const { receive, circuit } = trial;
  const groupOf = (port: number) => sending.rf.group[port];
  const isOnEnd = endGroups(trial, sending).has(groupOf(source.port) as number);
  if (!isOnEnd || !isSending(source, sending)) return [];
  const units = circuit.rf.edges.flatMap(({ a, b, gate, origin }) => {
    const isSelected = isOpenGate(gate, receive.on) || isOpenGate(gate, sending.on);
    // A hand switch is where somebody left it; only what an actor moves can be stuck.
    const moves = gate.some(({ actor }) => circuit.actors[actor] !== undefined);
    if (origin.type !== 'element' || !moves || isSelected) return [];
    const power = circuit.actorOf.get(`${origin.unit}.powered`);
    if (power !== undefined && sending.on[power] !== 1) return [];
    const ends = [groupOf(a), groupOf(b)];
    return ends.includes(groupOf(source.port)) && ends.includes(groupOf(receiver.port)) ? [origin.unit] : [];
  });
  return groupOf(source.port) === groupOf(receiver.port) ? [] : [...new Set(units)];
}

/** Units with a path that is selected in one of the two states and not in the other. */
function changedUnits(trial: Trial, sending: Reach): string[] {
  const units = trial.circuit.rf.edges.flatMap((edge) => {
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
  unit: string,
  ports: readonly number[],
): Cable[] {
  const ends = new Set(ports.flatMap((port) => [...reachable(circuit, unit, port)]));
  const name = (end: Cable['a']) => circuit.rf.ports.indexOf(`${end.unit}.${end.port}`);
  return cablesIn(station, hookup).filter(
    (c) => (c.a.unit === unit && ends.has(name(c.b))) || (c.b.unit === unit && ends.has(name(c.a))),
  );
}

/** Ports that hang on this one by cables and by whatever is in the units between, one unit left out. */
function reachable(circuit: Circuit, without: string, start: number): Set<number> {
  const seen = new Set([start]);
  const open = [start];
  for (let port = open.pop(); port !== undefined; port = open.pop()) {
    for (const edge of circuit.rf.edges) {
      if (edge.a !== port && edge.b !== port) continue;
      const other = edge.a === port ? edge.b : edge.a;
      if (seen.has(other) || rfPortRef(circuit, other).unit === without) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}
