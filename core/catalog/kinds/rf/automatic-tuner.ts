import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Finds its match by itself while it gets enough power. */
export const automaticTuner: UnitKind = {
  name: 'Tuner, automatic 200 W',
  group: 'rf',
  summary: 'Matches 8 to 800 Ω; needs 5 W to tune; 12 V; SO-239',
  words: ['atu', 'auto tuner', 'coupler'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.3,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    {
      id: 'match',
      type: 'matcher',
      a: 'transmitter',
      b: 'antenna',
      lossDb: 0.3,
      minOhms: 8,
      maxOhms: 800,
      maxWatts: 200,
      minWatts: 5,
    },
  ],
  cautions: ['Tune at low power: its relays move while it tunes.'],
  source: 'typical figures',
};
