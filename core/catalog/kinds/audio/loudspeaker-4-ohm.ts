import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A larger loudspeaker on its own lead. */
export const loudspeaker4Ohm: UnitKind = {
  name: 'Loudspeaker, 4 Ω',
  group: 'audio',
  summary: '10 W; own lead with a 3.5 mm mono plug',
  words: ['speaker', 'mobile', 'ls'],
  ports: [{ id: 'plug', label: '', class: 'audio', connector: 'mono-35-plug', side: 'left', needed: 'optional' }],
  elements: [{ id: 'coil', type: 'audioLoad', contact: 'plug.tip', ohms: 4, fullVolts: 1, watts: 10, dcOhms: 3.5 }],
  isolated: 'all',
  source: 'typical figures',
};
