import type { UnitKind } from '../../../station/schema/unit-kind.ts';

const places = [
  ['one', '1'],
  ['two', '2'],
  ['three', '3'],
  ['four', '4'],
] as const;

/** The one point where all earths of the station meet. */
export const earthBar: UnitKind = {
  name: 'Earth bar, 4 places',
  group: 'earth',
  summary: 'Common earth point at the entry, joined to the earth rod',
  words: ['ground', 'bonding', 'earth rod', 'grounding'],
  ports: places.map(([id, label]) => ({
    id,
    label,
    class: 'earth',
    connector: 'earth-stud',
    side: 'top',
    needed: 'optional',
  })),
  elements: places.map(([id]) => ({
    id: `bar-${id}`,
    type: 'conductor',
    from: `${id}.earth`,
    to: 'chassis',
    ohms: 0.0005,
  })),
  cautions: ['Bond the station’s earth to the mains earth as the local electrical code says.'],
  source: 'typical figures',
};
