import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A cheap low-voltage cut-off that opens the minus. */
export const batteryCutOff: UnitKind = {
  name: 'Battery cut-off, in the minus',
  group: 'power',
  summary: 'Opens the minus below 11 V; 30 A',
  words: ['low voltage disconnect', 'lvd', 'protect'],
  ports: [
    { id: 'battery', label: 'battery', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'load', label: 'load', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'plus', type: 'conductor', from: 'battery.plus', to: 'load.plus', ohms: 0.001 },
    {
      id: 'switch',
      type: 'contactPair',
      from: 'battery.minus',
      to: 'load.minus',
      device: 'relay',
      onOhms: 0.003,
      maxVolts: 30,
      maxAmps: 30,
      when: { on: ['closed'] },
    },
  ],
  actors: [
    {
      id: 'closed',
      label: 'Closed',
      feels: { type: 'voltageAbove', contact: 'battery.plus', volts: 11, reference: 'battery.minus' },
      operateMs: 10,
      releaseMs: 10,
      unpowered: true,
    },
  ],
  isolated: 'all',
  cautions: ['Any other way between the two minus sides makes it useless: a braid, a USB lead, an earth wire.'],
  source: 'typical figures',
};
