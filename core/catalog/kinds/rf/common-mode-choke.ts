import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Ferrite on the feeder: keeps RF off the outside of the coax. */
export const commonModeChoke: UnitKind = {
  name: 'Common-mode choke, 1 kW',
  group: 'rf',
  summary: '1.8 to 30 MHz; SO-239',
  words: ['line isolator', 'ferrite', 'rf choke', 'tvi'],
  ports: [
    { id: 'station', label: 'station', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'line',
      type: 'rfPath',
      a: 'station',
      b: 'antenna',
      lossDb: 0.1,
      maxWatts: 1000,
      minHz: 1_800_000,
      maxHz: 30_000_000,
      dcOhms: 0.02,
    },
  ],
  source: 'typical figures',
};
