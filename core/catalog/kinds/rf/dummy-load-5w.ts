import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small resistor to send into while testing. */
export const dummyLoad5w: UnitKind = {
  name: 'Dummy load, 5 W',
  group: 'rf',
  summary: '50 Ω, 10 W for half a minute; BNC',
  words: ['termination', '50 ohm', 'test load'],
  ports: [{ id: 'input', label: '', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' }],
  elements: [
    {
      id: 'load',
      type: 'rfLoad',
      port: 'input',
      role: 'termination',
      ohms: 50,
      watts: 5,
      shortWatts: 10,
      shortSeconds: 30,
      dcOhms: 50,
    },
  ],
  source: 'typical figures',
};
