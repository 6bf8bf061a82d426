import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A long yagi for weak signals. */
export const yagi2m: UnitKind = {
  name: 'Yagi, 2 m 10 elements',
  group: 'rf',
  summary: '144 to 146 MHz, 13 dBi, 500 W; N',
  words: ['beam', 'directional', 'moonbounce'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'n-jack',
      side: 'left',
      needed: 'optional',
      minHz: 144_000_000,
      maxHz: 146_000_000,
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
      maxHz: 146_000_000,
      swr: 1.3,
      watts: 500,
      gainDbi: 13,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
