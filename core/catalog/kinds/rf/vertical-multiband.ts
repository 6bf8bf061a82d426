import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A trapped vertical with radials. */
export const verticalMultiband: UnitKind = {
  name: 'Vertical, 40 to 10 m',
  group: 'rf',
  summary: 'SWR to 2 on its bands, 500 W; SO-239',
  words: ['ground plane', 'trap', 'radials'],
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
      swr: 1.8,
      watts: 500,
      gainDbi: 0,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
