import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A rotary beam for 20 m. */
export const beamThreeElement: UnitKind = {
  name: 'Beam, 3 elements 20 m',
  group: 'rf',
  summary: '7.5 dBi, SWR to 1.5, 1 kW; SO-239',
  words: ['yagi', 'directional', 'rotary'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'uhf-jack',
      side: 'left',
      needed: 'optional',
      minHz: 14_000_000,
      maxHz: 14_350_000,
    },
  ],
  elements: [
    {
      id: 'wire',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 50,
      minHz: 14_000_000,
      maxHz: 14_350_000,
      swr: 1.4,
      watts: 1000,
      gainDbi: 7.5,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
