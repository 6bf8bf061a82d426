import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A resonant dipole for 20 m with its coax at the middle. */
export const dipole: UnitKind = {
  name: 'Dipole, 20 m',
  group: 'rf',
  summary: '62 Ω near 14.1 MHz, 2.15 dBi; outdoor; SO-239',
  words: ['aerial', 'half wave', 'resonant', 'outdoor', 'antenna'],
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
      ohms: 62,
      reactance: 5,
      watts: 500,
      gainDbi: 2.15,
      minHz: 14_000_000,
      maxHz: 14_350_000,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Keep people away from it while sending: RF burns.'],
  source: 'typical figures',
};
