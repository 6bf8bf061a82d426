import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Lets one band through, for two stations side by side. */
export const bandPassFilter20m: UnitKind = {
  name: 'Band-pass filter, 20 m 100 W',
  group: 'rf',
  summary: '13.9 to 14.5 MHz, 0.6 dB; SO-239',
  words: ['bpf', 'contest', 'filter'],
  ports: [
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'filter',
      type: 'rfPath',
      a: 'transmitter',
      b: 'antenna',
      lossDb: 0.6,
      maxWatts: 100,
      minHz: 13_900_000,
      maxHz: 14_500_000,
      rejection: [{ fromHz: 20_000_000, db: 45 }],
    },
  ],
  source: 'typical figures',
};
