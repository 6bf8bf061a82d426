import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Shares one antenna between two receivers; not for transmitting. */
export const splitter: UnitKind = {
  name: 'Receive splitter, 2 ways',
  group: 'rf',
  summary: '3.3 dB to each, 25 dB between; BNC; no transmitting',
  words: ['multicoupler', 'power divider', 'combiner'],
  ports: [
    { id: 'common', label: 'antenna', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'optional' },
    { id: 'one', label: '1', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'to-one', type: 'rfPath', a: 'common', b: 'one', lossDb: 3.3, maxWatts: 0.5 },
    { id: 'to-two', type: 'rfPath', a: 'common', b: 'two', lossDb: 3.3, maxWatts: 0.5 },
    { id: 'across', type: 'rfPath', a: 'one', b: 'two', lossDb: 25, maxWatts: 0.5 },
  ],
  cautions: ['Half a watt is all that its resistor stands: never transmit into it.'],
  source: 'typical figures',
};
