import type { RfEdge } from '../../circuit/circuit.ts';
import { isOpenGate } from '../../circuit/circuit.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import type { RfField } from '../../rf/rf-solution.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion, momentWords } from '../../trial/instants.ts';
import { rfPortName } from '../../trial/names.ts';
import { touchesOnWay } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

/** A stage that cannot put out more than this is there to listen. */
const listensDbm = 27;
/** What such a stage stands where its kind does not say. */
const assumedDbm = 10;

export const preampTransmittedInto = defineRule({
  id: 'rf/preamp-transmitted-into',
  severity: 'danger',
  title: 'Power is sent into a receive preamplifier',
  compares: 'the RF at the input and at the output of each receive preamplifier against what it stands',
  why: 'Its transistor is made for microwatts: a single dot of a transmitter ends it, from behind as well as from in front.',
  advice:
    'Bypass it by a relay that has moved before RF starts, keyed by the sequencer, or take it out of the line that carries the transmitter.',
  source: 'the stage’s own limit; without one, +10 dBm (assumed)',
  follows: ['rf/changeover-reversed', 'rf/no-changeover', 'power/not-powered'],
  messages: {
    input: '{level dBm} ({watts W}) from {transmitter} reaches the input {port} {moment}; it stands {limit dBm}.',
    output: '{level dBm} ({watts W}) from {transmitter} reaches {port}, the output, {moment}; it stands {limit dBm}.',
  },
  looksAt: {
    region({ number, edges }, { station, trial }, report) {
      const { circuit } = trial;
      const stages = edges.filter((e) => e.oneWay && e.lossDb < 0 && (e.saturationDbm ?? 0) < listensDbm);
      for (const { name, reach } of stages.length > 0 ? instantsOfRegion(trial, number) : []) {
        const open = stages.filter((e) => isOpenGate(e.gate, reach.on));
        for (const { stage, field } of open.flatMap((stage) =>
          reach.rf.at(number).fields.map((field) => ({ stage, field })),
        )) {
          const hit = hardest(stage, field, circuit.rf.edges);
          const source = circuit.rf.sources[field.source];
          if (!hit || !source) continue;
          report({
            message: hit.side,
            severity: 'danger',
            at: [rfPortRef(circuit, hit.port)],
            values: {
              level: hit.dbm,
              watts: wattsFromDbm(hit.dbm),
              transmitter: unitName(station, source.unit),
              port: rfPortName(station, circuit, hit.port),
              limit: hit.limit,
              moment: momentWords[name],
            },
            moment: name,
            weight: hit.dbm,
            touches: touchesOnWay(circuit, field, hit.port),
          });
        }
      }
    },
  },
});

/** Where a source hits a stage harder than it stands: from in front, or from behind by another way than through it. */
function hardest(stage: RfEdge, field: RfField, edges: readonly RfEdge[]) {
  const limit = stage.maxWatts === null ? assumedDbm : 10 * Math.log10(stage.maxWatts * 1000);
  const input = field.best.get(stage.a);
  if (input && input.dbm > limit) return { side: 'input', port: stage.a, dbm: input.dbm, limit } as const;
  const output = field.best.get(stage.b);
  const isOwn = output?.edge != null && edges[output.edge] === stage;
  if (output && !isOwn && output.dbm > limit) return { side: 'output', port: stage.b, dbm: output.dbm, limit } as const;
  return null;
}
