import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** The accessory socket of a car, fused for little. */
export const vehicleOutlet: UnitKind = {
  name: 'Vehicle outlet, 10 A',
  group: 'power',
  summary: 'Accessory socket behind a 10 A fuse',
  words: ['cigarette lighter', 'accessory', '12 V socket'],
  ports: [
    { id: 'battery', label: 'wiring', class: 'dc', connector: 'stud-pair', side: 'left', needed: 'always' },
    { id: 'out', label: 'socket', class: 'dc', connector: 'vehicle-12v-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'fuse',
      type: 'conductor',
      from: 'battery.plus',
      to: 'out.centre',
      ohms: 0.03,
      fuseAmps: 10,
      fuseFamily: 'blade',
    },
    { id: 'minus', type: 'conductor', from: 'battery.minus', to: 'out.shell', ohms: 0.02 },
  ],
  isolated: 'all',
  cautions: ['Its plugs get hot well before the fuse opens: no more than 8 A for long.'],
  source: 'typical figures; fuse and contacts as general works on vehicle outlets give',
};
