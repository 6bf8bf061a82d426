import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Puts DC on a coax for what hangs at its far end. */
export const biasTee: UnitKind = {
  name: 'DC injector for coax',
  group: 'rf',
  summary: 'RF only on one side, RF and DC on the other; 1 A; BNC and F',
  words: ['bias tee', 'bias t', 'power inserter', 'phantom'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'rf', label: 'RF only', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' },
    {
      id: 'line',
      label: 'RF and DC',
      class: 'rf',
      connector: 'f-jack',
      side: 'right',
      needed: 'optional',
      limits: { centre: { minV: -1, maxV: 30 } },
    },
  ],
  elements: [
    { id: 'through', type: 'rfPath', a: 'rf', b: 'line', lossDb: 0.3, maxWatts: 1, maxHz: 1_000_000_000 },
    { id: 'choke', type: 'conductor', from: 'power.centre', to: 'line.centre', ohms: 0.1 },
    { id: 'return', type: 'conductor', from: 'power.shell', to: 'chassis', ohms: 0.005 },
  ],
  cautions: ['The wrong way round it puts the supply on the receiver.'],
  source: 'typical figures',
};
