import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A relay that the mains supply holds; without it the battery feeds the station. */
export const backupChangeover: UnitKind = {
  name: 'Back-up changeover, 30 A',
  group: 'power',
  summary: 'Mains supply, battery, station; trickle-charges through 10 Ω',
  words: ['ups', 'emergency power', 'relay'],
  ports: [
    { id: 'mains', label: 'mains supply', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'optional' },
    { id: 'battery', label: 'battery', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'optional' },
    { id: 'output', label: 'station', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'from-mains',
      type: 'contactPair',
      from: 'mains.plus',
      to: 'output.plus',
      device: 'relay',
      onOhms: 0.005,
      maxVolts: 30,
      maxAmps: 30,
      when: { on: ['held'] },
    },
    {
      id: 'from-battery',
      type: 'contactPair',
      from: 'battery.plus',
      to: 'output.plus',
      device: 'relay',
      onOhms: 0.005,
      maxVolts: 30,
      maxAmps: 30,
      when: { off: ['held'] },
    },
    { id: 'charge', type: 'conductor', from: 'mains.plus', to: '@charge', ohms: 10 },
    { id: 'charge-diode', type: 'diode', anode: '@charge', cathode: 'battery.plus', volts: 0.7, atAmps: 1, ohms: 0.05 },
    { id: 'minus-mains', type: 'conductor', from: 'mains.minus', to: 'output.minus', ohms: 0.001 },
    { id: 'minus-battery', type: 'conductor', from: 'battery.minus', to: 'output.minus', ohms: 0.001 },
  ],
  actors: [
    {
      id: 'held',
      label: 'Held by the mains supply',
      feels: { type: 'voltageAbove', contact: 'mains.plus', volts: 10, reference: 'mains.minus' },
      operateMs: 10,
      releaseMs: 15,
      unpowered: true,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
