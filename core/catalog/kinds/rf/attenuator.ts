import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A resistor pad that takes a tenth of the power through. */
export const attenuator: UnitKind = {
  name: 'Attenuator, 10 dB 5 W',
  group: 'rf',
  summary: 'Both ways alike, BNC on both sides',
  words: ['pad', 'reducer', '10 db'],
  ports: [
    { id: 'one', label: '', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' },
    { id: 'two', label: '', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'pad', type: 'rfPath', a: 'one', b: 'two', lossDb: 10, maxWatts: 5, maxHz: 500_000_000, dcOhms: 71 },
  ],
  source: 'typical figures',
};
