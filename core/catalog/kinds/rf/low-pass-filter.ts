import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Lets HF through and nothing above it. */
export const lowPassFilter: UnitKind = {
  name: 'Low-pass filter, 30 MHz 200 W',
  group: 'rf',
  summary: 'Passes up to 30 MHz, SO-239 on both sides',
  words: ['lpf', 'harmonic filter', 'tvi'],
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
      lossDb: 0.3,
      maxWatts: 200,
      maxHz: 30_000_000,
      rejection: [
        { fromHz: 42_000_000, db: 40 },
        { fromHz: 60_000_000, db: 60 },
      ],
      dcOhms: 0.05,
    },
  ],
  source: 'typical figures',
};
