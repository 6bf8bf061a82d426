import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A rod in the soil. */
export const earthRod: UnitKind = {
  name: 'Earth rod',
  group: 'earth',
  summary: '2.4 m rod at the entry or the mast; bond it to all others',
  words: ['ground rod', 'electrode', 'grounding'],
  ports: [{ id: 'clamp', label: 'clamp', class: 'earth', connector: 'earth-stud', side: 'top', needed: 'optional' }],
  elements: [{ id: 'rod', type: 'conductor', from: 'clamp.earth', to: 'chassis', ohms: 0.001 }],
  outdoor: true,
  electrode: true,
  cautions: [
    'Look for pipes and cables before you drive it.',
    'Bond it to the mains earth as the local electrical code says.',
  ],
  source: 'typical figures',
};
