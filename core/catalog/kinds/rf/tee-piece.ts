import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Three sockets joined, nothing more. */
export const teePiece: UnitKind = {
  name: 'Coax tee',
  group: 'rf',
  summary: 'SO-239; for nothing but measuring',
  words: ['t adapter', 't piece'],
  ports: [
    { id: 'one', label: '1', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'two', label: '2', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
    { id: 'three', label: '3', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'a', type: 'rfPath', a: 'one', b: 'two', lossDb: 0, dcOhms: 0.002, maxWatts: 500 },
    { id: 'b', type: 'rfPath', a: 'one', b: 'three', lossDb: 0, dcOhms: 0.002, maxWatts: 500 },
  ],
  source: 'typical figures',
};
