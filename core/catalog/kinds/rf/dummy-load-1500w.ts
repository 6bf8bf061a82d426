import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A can of oil with a resistor in it. */
export const dummyLoad1500w: UnitKind = {
  name: 'Dummy load, 1.5 kW oil',
  group: 'rf',
  summary: '200 W for good, 1.5 kW for ten minutes; SO-239',
  words: ['cantenna', 'termination', 'test load'],
  ports: [{ id: 'input', label: '', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' }],
  elements: [
    {
      id: 'load',
      type: 'rfLoad',
      port: 'input',
      role: 'termination',
      ohms: 50,
      watts: 200,
      shortWatts: 1500,
      shortSeconds: 600,
      dcOhms: 50,
    },
  ],
  cautions: ['The oil gets hot and stays hot for hours.'],
  source: 'typical figures; oil-filled loads from memory',
};
