import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One 10 MHz for four units. */
export const referenceSplitter: UnitKind = {
  name: 'Reference splitter, 4 ways',
  group: 'computer',
  summary: '6.5 dB to each; BNC',
  words: ['distribution', '10 mhz'],
  ports: [
    { id: 'input', label: 'in', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' },
    { id: 'one', label: '1', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
    { id: 'three', label: '3', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
    { id: 'four', label: '4', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'to-one', type: 'rfPath', a: 'input', b: 'one', lossDb: 6.5, maxWatts: 0.25 },
    { id: 'to-two', type: 'rfPath', a: 'input', b: 'two', lossDb: 6.5, maxWatts: 0.25 },
    { id: 'to-three', type: 'rfPath', a: 'input', b: 'three', lossDb: 6.5, maxWatts: 0.25 },
    { id: 'to-four', type: 'rfPath', a: 'input', b: 'four', lossDb: 6.5, maxWatts: 0.25 },
  ],
  source: 'typical figures',
};
