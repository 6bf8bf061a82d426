import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A hand-turned antenna tuner; its series capacitors block DC. */
export const manualTuner: UnitKind = {
  name: 'Tuner, manual 100 W',
  group: 'rf',
  summary: 'Matches 10 to 600 Ω, SO-239 on both sides',
  words: ['atu', 'matchbox', 'transmatch', 'antenna tuner', 'antenna coupler'],
  ports: [
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'match',
      type: 'matcher',
      a: 'transmitter',
      b: 'antenna',
      lossDb: 0.4,
      minOhms: 10,
      maxOhms: 600,
      maxWatts: 100,
    },
  ],
  source: 'typical figures',
};
