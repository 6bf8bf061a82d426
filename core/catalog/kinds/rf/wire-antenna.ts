import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A wire that a tuner has to match, on the 30 m band. */
export const wireAntenna: UnitKind = {
  name: 'Wire antenna, 30 m',
  group: 'rf',
  summary: '62 − j140 Ω at 10.12 MHz; outdoor; SO-239 at its foot',
  words: ['long wire', 'end-fed', 'aerial', 'random wire', 'outdoor'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'uhf-jack',
      side: 'left',
      needed: 'optional',
      minHz: 10_100_000,
      maxHz: 10_150_000,
    },
  ],
  elements: [
    {
      id: 'wire',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 62,
      reactance: -140,
      watts: 100,
      gainDbi: 0,
      minHz: 10_100_000,
      maxHz: 10_150_000,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
