import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A collinear on the roof. */
export const vhfVertical: UnitKind = {
  name: 'Vertical, 2 m and 70 cm',
  group: 'rf',
  summary: '144 and 430 MHz, 200 W; N',
  words: ['collinear', 'base antenna', 'dual band'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'n-jack',
      side: 'left',
      needed: 'optional',
      minHz: 144_000_000,
      maxHz: 440_000_000,
    },
  ],
  elements: [
    {
      id: 'wire',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 50,
      minHz: 144_000_000,
      maxHz: 440_000_000,
      swr: 1.4,
      watts: 200,
      gainDbi: 5,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
