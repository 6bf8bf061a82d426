import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A transformer and rectifier in a mains plug: far above its printed voltage until it is fully loaded. */
export const plugInAdapter: UnitKind = {
  name: 'Plug-in adapter, 12 V 1 A unregulated',
  group: 'power',
  summary: '16.5 V with no load, 12 V at 1 A; own lead with a barrel plug, centre plus',
  words: ['wall wart', 'psu', 'power supply', 'transformer', 'mains adapter'],
  ports: [{ id: 'out', label: '', class: 'dc', connector: 'barrel-21-plug', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.centre',
      minus: 'out.shell',
      volts: 16.5,
      // Mains 10 % high.
      maxVolts: 18.2,
      sourceOhms: 4.5,
      amps: 1,
      peakAmps: 3.6,
      beyond: 'sags',
    },
  ],
  isolated: 'all',
  cautions: ['Unregulated: its voltage without load is a third above the printed one.'],
  mains: true,
  source: 'typical figures',
};
