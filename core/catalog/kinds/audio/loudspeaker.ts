import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small loudspeaker on its own lead. */
export const loudspeaker: UnitKind = {
  name: 'Loudspeaker, 8 Ω',
  group: 'audio',
  summary: 'Own lead with a 3.5 mm mono plug',
  words: ['speaker', 'ls'],
  ports: [{ id: 'plug', label: '', class: 'audio', connector: 'mono-35-plug', side: 'left', needed: 'optional' }],
  elements: [{ id: 'coil', type: 'audioLoad', contact: 'plug.tip', ohms: 8, fullVolts: 1, watts: 5, dcOhms: 7 }],
  isolated: 'all',
  source: 'typical figures',
};
