import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Keeps the current of a dipole off the coax. */
export const balun11: UnitKind = {
  name: 'Balun 1:1, 400 W',
  group: 'rf',
  summary: 'At the middle of a dipole; SO-239 to the wire',
  words: ['current balun', 'choke', 'feed point'],
  ports: [
    { id: 'line', label: 'line', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'core',
      type: 'rfPath',
      a: 'line',
      b: 'antenna',
      lossDb: 0.2,
      maxWatts: 400,
      minHz: 1_800_000,
      maxHz: 30_000_000,
      dcOhms: 0.05,
    },
  ],
  source: 'typical figures',
};
