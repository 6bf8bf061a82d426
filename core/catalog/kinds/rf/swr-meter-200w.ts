import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Shows forward and reflected power. */
export const swrMeter200w: UnitKind = {
  name: 'SWR and power meter, 200 W',
  group: 'rf',
  summary: 'Scale to 200 W, 1.8 to 60 MHz; SO-239',
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
      lossDb: 0.1,
      maxWatts: 200,
      scaleWatts: 200,
      maxHz: 60_000_000,
      dcOhms: 0.01,
    },
  ],
  source: 'typical figures',
};
