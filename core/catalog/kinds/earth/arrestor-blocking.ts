import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** An arrestor with a capacitor in the line: no DC passes. */
export const arrestorBlocking: UnitKind = {
  name: 'Arrestor, DC blocking',
  group: 'earth',
  summary: 'In the antenna line, N on both sides, earth stud; blocks DC',
  words: ['lightning', 'surge', 'protector', 'dc block'],
  ports: [
    { id: 'station', label: 'station', class: 'rf', connector: 'n-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'n-jack', side: 'right', needed: 'optional' },
    { id: 'earth', label: 'earth', class: 'earth', connector: 'earth-stud', side: 'bottom', needed: 'always' },
  ],
  elements: [
    { id: 'line', type: 'rfPath', a: 'station', b: 'antenna', lossDb: 0.1, maxWatts: 500 },
    { id: 'body', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  cautions: ['It does not protect against a direct stroke: unplug the antenna before a storm.'],
  source: 'typical figures',
};
