import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Two bands on one coax: HF on one side, VHF on the other. */
export const duplexer: UnitKind = {
  name: 'Duplexer, HF and VHF',
  group: 'rf',
  summary: 'HF to 30 MHz, VHF 110 to 170 MHz; 60 dB between; N and SO-239',
  words: ['diplexer', 'triplexer', 'combiner'],
  ports: [
    { id: 'common', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'hf', label: 'HF', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
    { id: 'vhf', label: 'VHF', class: 'rf', connector: 'n-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'low',
      type: 'rfPath',
      a: 'common',
      b: 'hf',
      lossDb: 0.2,
      maxWatts: 800,
      maxHz: 30_000_000,
      isolationDb: 60,
      dcOhms: 0.02,
    },
    {
      id: 'high',
      type: 'rfPath',
      a: 'common',
      b: 'vhf',
      lossDb: 0.3,
      maxWatts: 400,
      minHz: 110_000_000,
      maxHz: 170_000_000,
      isolationDb: 60,
    },
  ],
  source: 'typical figures',
};
