import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** The earth of the house installation, where a licensed electrician offers a bonding point. */
export const mainsEarth: UnitKind = {
  name: 'Mains earth, bonding point',
  group: 'earth',
  summary: 'The installation’s own earth electrode',
  words: ['main earth', 'pe', 'ground', 'service entrance'],
  ports: [{ id: 'bond', label: 'bond', class: 'earth', connector: 'earth-stud', side: 'top', needed: 'optional' }],
  elements: [{ id: 'bar', type: 'conductor', from: 'bond.earth', to: 'chassis', ohms: 0.001 }],
  electrode: true,
  cautions: ['Work on the installation is for a licensed electrician.'],
  source: 'typical figures',
};
