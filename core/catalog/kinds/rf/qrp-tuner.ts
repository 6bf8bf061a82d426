import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small automatic tuner for small transmitters. */
export const qrpTuner: UnitKind = {
  name: 'Tuner, automatic 10 W',
  group: 'rf',
  summary: 'Matches 10 to 500 Ω; needs 0.1 W to tune, stands 10 W; BNC',
  words: ['atu', 'qrp', 'auto tuner'],
  ports: [
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'match',
      type: 'matcher',
      a: 'transmitter',
      b: 'antenna',
      lossDb: 0.4,
      minOhms: 10,
      maxOhms: 500,
      maxWatts: 10,
      minWatts: 0.1,
    },
  ],
  source: 'typical figures',
};
