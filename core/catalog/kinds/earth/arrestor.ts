import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Its tube fires at 90 V; below that, DC for what hangs on the mast goes by it. */
const centre = { minV: -70, maxV: 70 };

const line = (id: string, side: 'left' | 'right'): UnitKind['ports'][number] => ({
  id,
  label: id,
  class: 'rf',
  connector: 'uhf-jack',
  side,
  needed: 'optional',
  limits: { centre },
});

/** A gas tube arrestor where the coax comes into the house. */
export const arrestor: UnitKind = {
  name: 'Arrestor, gas tube',
  group: 'earth',
  summary: 'In the antenna line at the entry, SO-239 on both sides, earth stud',
  words: ['lightning', 'surge', 'protector', 'arrester', 'spark gap'],
  ports: [
    line('station', 'left'),
    line('antenna', 'right'),
    { id: 'earth', label: 'earth', class: 'earth', connector: 'earth-stud', side: 'bottom', needed: 'always' },
  ],
  elements: [
    { id: 'line', type: 'rfPath', a: 'station', b: 'antenna', lossDb: 0.1, maxWatts: 200, dcOhms: 0.01 },
    { id: 'body', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  cautions: ['It does not protect against a direct stroke: unplug the antenna before a storm.'],
  source: 'typical figures; a 90 V tube as general works on coax arrestors give',
};
