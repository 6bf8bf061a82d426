import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A finned resistor to send into while testing. */
export const dummyLoad100w: UnitKind = {
  name: 'Dummy load, 100 W',
  group: 'rf',
  summary: '50 Ω, 200 W for a minute; SO-239',
  words: ['termination', '50 ohm', 'test load'],
  ports: [{ id: 'input', label: '', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' }],
  elements: [
    {
      id: 'load',
      type: 'rfLoad',
      port: 'input',
      role: 'termination',
      ohms: 50,
      watts: 100,
      shortWatts: 200,
      shortSeconds: 60,
      dcOhms: 50,
    },
  ],
  source: 'typical figures',
};
