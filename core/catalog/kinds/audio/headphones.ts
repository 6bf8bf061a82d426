import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Stereo phones on their own lead. */
export const headphones: UnitKind = {
  name: 'Headphones, 32 Ω',
  group: 'audio',
  summary: 'Stereo, own lead with a 6.35 mm plug',
  words: ['phones', 'earphones', 'cans'],
  ports: [{ id: 'plug', label: '', class: 'audio', connector: 'stereo-635-plug', side: 'left', needed: 'optional' }],
  elements: [
    { id: 'left', type: 'audioLoad', contact: 'plug.tip', ohms: 32, fullVolts: 0.3, watts: 0.1 },
    { id: 'right', type: 'audioLoad', contact: 'plug.ring', ohms: 32, fullVolts: 0.3, watts: 0.1 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
