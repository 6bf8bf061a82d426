import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Takes 100 W and lets 10 mW through. */
export const attenuator40db100w: UnitKind = {
  name: 'Attenuator, 40 dB 100 W',
  group: 'rf',
  summary: 'For a transverter behind a 100 W transceiver; one way; N and BNC',
  words: ['pad', 'power attenuator', 'transverter'],
  ports: [
    { id: 'one', label: '100 W', class: 'rf', connector: 'n-jack', side: 'left', needed: 'optional' },
    { id: 'two', label: '10 mW', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [{ id: 'pad', type: 'rfPath', a: 'one', b: 'two', lossDb: 40, maxWatts: 100, maxHz: 500_000_000 }],
  cautions: ['It gets hot: give it air.'],
  source: 'typical figures',
};
