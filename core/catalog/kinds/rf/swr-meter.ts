import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A power and SWR meter in the line. */
export const swrMeter: UnitKind = {
  name: 'Meter, SWR and power 15 W',
  group: 'rf',
  summary: 'In the line, SO-239 on both sides',
  words: ['swr', 'wattmeter', 'directional coupler', 'reflected power'],
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
      maxWatts: 15,
      scaleWatts: 15,
      dcOhms: 0.01,
    },
  ],
  source: 'typical figures',
};
