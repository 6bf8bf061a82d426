import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Half a wave of wire on a 49:1 transformer. */
export const endFedWire: UnitKind = {
  name: 'End-fed wire, 40 to 10 m',
  group: 'rf',
  summary: 'SWR to 2, 100 W; SO-239',
  words: ['efhw', 'random wire', 'portable'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'uhf-jack',
      side: 'left',
      needed: 'optional',
      minHz: 7_000_000,
      maxHz: 29_700_000,
    },
  ],
  elements: [
    {
      id: 'wire',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 50,
      minHz: 7_000_000,
      maxHz: 29_700_000,
      swr: 1.9,
      watts: 100,
      gainDbi: 1,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
