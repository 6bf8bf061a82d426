import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Shows forward and reflected power. */
export const swrMeter2kw: UnitKind = {
  name: 'SWR and power meter, 2 kW',
  group: 'rf',
  summary: 'Scale to 2 kW, 1.8 to 60 MHz; SO-239',
  words: ['wattmeter', 'directional', 'bridge'],
  ports: [
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'line',
      type: 'rfPath',
      a: 'transmitter',
      b: 'antenna',
      lossDb: 0.05,
      maxWatts: 2000,
      scaleWatts: 2000,
      maxHz: 60_000_000,
      dcOhms: 0.01,
    },
  ],
  source: 'typical figures',
};
