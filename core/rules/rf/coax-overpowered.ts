import { findCable, portOf, unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { rfPortName } from '../../trial/names.ts';
import { defineRule } from '../rule.ts';

export const coaxOverpowered = defineRule({
  id: 'rf/coax-overpowered',
  severity: 'danger',
  title: 'More RF voltage than the cable or plug stands',
  compares:
    'the peak voltage on each cable, at the worst place of its standing wave, and at each connector against what they stand',
  why: 'At a voltage maximum the dielectric arcs through, and the cable is a short from then on.',
  advice:
    'Less power, a cable and connectors of a higher voltage, or a tuner at the antenna so that the line is matched.',
  source:
    'the working voltages of the cable types and the connectors’ ratings in the catalogue; peak volts √(2·P·Z0·SWR)',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: {
    cable: '{cable} has up to {volts V} peak on it while {transmitter} sends; it stands {limit V}.',
    connector: '{port} has {volts V} peak on it while {transmitter} sends; its {connector} stands {limit V}.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial: { circuit } }, report) {
      const transmitter = unitName(station, source.unit);
      const base = { severity: 'danger', moment: 'sending', touches } as const;
      for (const { edge, peakVolts } of chain.steps) {
        const limit = edge.line?.maxVolts ?? null;
        if (edge.origin.type !== 'cable' || peakVolts === null || limit === null || peakVolts <= limit) continue;
        const { cable } = edge.origin;
        const number = findCable(station, cable)?.number ?? cable;
        const values = { cable: number, volts: peakVolts, limit, transmitter };
        report({ ...base, message: 'cable', at: [{ cable }], values, weight: peakVolts / limit });
      }
      for (const { port, peakVolts } of chain.ports) {
        const ref = rfPortRef(circuit, port);
        const { connector } = portOf(station, ref);
        if (connector.volts === undefined || peakVolts <= connector.volts) continue;
        const name = rfPortName(station, circuit, port);
        const values = {
          port: name,
          volts: peakVolts,
          limit: connector.volts,
          connector: connector.name,
          transmitter,
        };
        report({ ...base, message: 'connector', at: [ref], values, weight: peakVolts / connector.volts });
      }
    },
  },
});
