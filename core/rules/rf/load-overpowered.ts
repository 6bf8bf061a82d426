import { type Circuit, isOpenGate } from '../../circuit/circuit.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import type { RfField } from '../../rf/rf-solution.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { rfPortName } from '../../trial/names.ts';
import { fieldOf, touchesOnWay } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const loadOverpowered = defineRule({
  id: 'rf/load-overpowered',
  severity: 'danger',
  title: 'More RF power than it takes',
  compares:
    'the power at each load and through each meter, tuner, filter and switch against its rating: key down, and on average',
  why: 'A dummy load or a meter that takes more than it is made for changes its value first and burns then.',
  advice: 'Use one of a higher rating, less power, or shorter transmissions with pauses between.',
  source: 'the unit’s own ratings; the average by the plan’s duty (OET Bulletin 65 Supplement B, table 2)',
  follows: [],
  messages: {
    peak: '{watts W} from {transmitter} reaches {port}; it takes {limit W} at most.',
    average: '{watts W} from {transmitter} reaches {port}, {average W} on average; it takes {limit W} continuously.',
    short:
      '{watts W} from {transmitter} reaches {port}; it takes {limit W} continuously, and this for {seconds} s at a time.',
  },
  looksAt: {
    region({ number, sources, loads }, { station, trial }, report) {
      const { circuit } = trial;
      const sendings = instantsOfRegion(trial, number).filter(({ name }) => name === 'sending');
      for (const { reach, source } of sendings.flatMap(({ reach }) => sources.map((source) => ({ reach, source })))) {
        const field = fieldOf(trial, reach, source);
        if (!field) continue;
        const say = (port: number, watts: number, limits: Ratings) => {
          const judged = judge(watts, station.plan.duty, limits);
          if (!judged) return;
          const values = {
            watts,
            transmitter: unitName(station, source.unit),
            port: rfPortName(station, circuit, port),
            average: watts * station.plan.duty,
          };
          const all = { ...values, limit: judged.limit, seconds: limits.shortSeconds ?? 0 };
          const touches = touchesOnWay(circuit, field, port);
          report({
            message: judged.message,
            severity: judged.severity,
            at: [rfPortRef(circuit, port)],
            values: all,
            moment: 'sending',
            weight: watts,
            touches,
          });
        };
        for (const load of loads) {
          const arrival = field.selected.get(load.port);
          if (load.spec.role !== 'receiver' && arrival && isOpenGate(load.gate, reach.on))
            say(load.port, wattsFromDbm(arrival.dbm), load.spec);
        }
        for (const { port, dbm, limit } of entries(circuit, field)) say(port, wattsFromDbm(dbm), { watts: limit });
      }
    },
  },
});

interface Ratings {
  watts?: number | undefined;
  shortWatts?: number | undefined;
  shortSeconds?: number | undefined;
  role?: string;
}

/** Seconds from which on a dummy load's rating for a while is one for any test: oil takes long to get hot. Common practice. */
const anyTest = 300;

function judge(watts: number, duty: number, { watts: continuous, shortWatts, shortSeconds = 0, role }: Ratings) {
  if (continuous === undefined || watts <= continuous) return null;
  const most = shortWatts ?? continuous;
  if (watts > most) return { message: 'peak', severity: 'danger', limit: most } as const;
  const isTested = role === 'termination' && shortSeconds >= anyTest;
  if (watts * duty > continuous && !isTested)
    return { message: 'average', severity: 'danger', limit: continuous } as const;
  return { message: 'short', severity: 'doubt', limit: continuous } as const;
}

/** Where power goes into something that only passes it on, with what that takes. */
function entries(circuit: Circuit, field: RfField): { port: number; dbm: number; limit: number }[] {
  return [...field.selected.values()].flatMap((arrival) => {
    const edge = arrival.edge === null ? undefined : circuit.rf.edges[arrival.edge];
    // How hard an amplifier may be driven is another rule's business.
    const limit = edge && edge.lossDb >= 0 ? edge.maxWatts : null;
    const port = arrival.from;
    const dbm = port === null ? undefined : field.selected.get(port)?.dbm;
    return limit == null || port === null || dbm === undefined ? [] : [{ port, dbm, limit }];
  });
}
