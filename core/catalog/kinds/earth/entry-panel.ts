import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A plate at the entry that bonds every coax screen to earth. */
export const entryPanel: UnitKind = {
  name: 'Entry panel, 2 coax',
  group: 'earth',
  summary: 'Two feed-throughs, SO-239 on both sides, earth stud',
  words: ['bulkhead', 'feed-through', 'single point ground'],
  ports: [
    { id: 'in-one', label: 'in 1', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'in-two', label: 'in 2', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'out-one', label: 'out 1', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
    { id: 'out-two', label: 'out 2', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
    { id: 'earth', label: 'earth', class: 'earth', connector: 'earth-stud', side: 'bottom', needed: 'always' },
  ],
  elements: [
    { id: 'one', type: 'rfPath', a: 'in-one', b: 'out-one', lossDb: 0.05, maxWatts: 1500, dcOhms: 0.005 },
    { id: 'two', type: 'rfPath', a: 'in-two', b: 'out-two', lossDb: 0.05, maxWatts: 1500, dcOhms: 0.005 },
    { id: 'plate', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  source: 'typical figures',
};
