import type { Circuit } from '../../circuit/circuit.ts';
import { formatDecimals } from '../../quantity/format.ts';
import { type RfField, wayTo } from '../../rf/rf-solution.ts';
import { systemOhms } from '../../rf/system-ohms.ts';
import { findCable, unitName } from '../../station/parts.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** A line of another impedance matters from this part of a wavelength on. */
const leastWavelengths = 0.05;
const differsShare = 0.1;
const lightMetresPerS = 299_792_458;

export const impedanceMismatch = defineRule({
  id: 'rf/impedance-mismatch',
  severity: 'doubt',
  title: 'A cable of another impedance in the line',
  compares:
    'the impedance of each coax that carries a transmitter’s power, and its length in wavelengths, against 50 Ω',
  why: 'It transforms what hangs on it: with a perfect antenna behind it the transmitter still sees another load, and it changes with the band.',
  advice: 'Use 50 Ω cable, or a length of a half wave where the other kind is there for a reason.',
  source:
    'transmission line theory: the worst that a matched load looks like through it is Z0²/50; a twentieth of a wavelength is common practice',
  follows: [],
  messages: {
    other:
      '{cable} is {ohms Ω} cable in a 50 Ω line, {waves} of a wavelength long: behind it {transmitter} can see an SWR of {swr}.',
  },
  looksAt: {
    region({ number }, { station, trial }, report) {
      const { circuit } = trial;
      const fields = instantsOfRegion(trial, number).flatMap(({ reach }) => reach.rf.at(number).fields);
      for (const field of fields) {
        for (const { edge, from } of field.selected.values()) {
          const origin = edge === null ? undefined : circuit.rf.edges[edge]?.origin;
          const cable = origin?.type === 'cable' ? findCable(station, origin.cable) : undefined;
          const coax = cable && station.cableKinds[cable.kind]?.coax;
          if (!cable || !coax || Math.abs(coax.z0 - systemOhms) <= differsShare * systemOhms) continue;
          const waves = (cable.lengthM * station.plan.frequencyHz) / (lightMetresPerS * coax.velocityFactor);
          if (waves < leastWavelengths || (from !== null && isTuned(circuit, field, from))) continue;
          const ratio = (coax.z0 / systemOhms) ** 2;
          report({
            message: 'other',
            severity: 'doubt',
            at: [{ cable: cable.id }],
            values: {
              cable: cable.number,
              ohms: coax.z0,
              waves: formatDecimals(waves, 2),
              transmitter: unitName(station, circuit.rf.sources[field.source]?.unit ?? ''),
              swr: formatDecimals(Math.max(ratio, 1 / ratio), 2),
            },
          });
        }
      }
    },
  },
});

/** Whether a tuner stands between the source and a port: what the line behind it looks like is the tuner's business. */
function isTuned(circuit: Circuit, field: RfField, port: number): boolean {
  const { edges } = wayTo(field.selected, port);
  return edges.some((i) => circuit.rf.edges[i]?.spec?.type === 'matcher');
}
