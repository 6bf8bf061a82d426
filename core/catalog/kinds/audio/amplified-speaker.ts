import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A loudspeaker with its amplifier. */
export const amplifiedSpeaker: UnitKind = {
  name: 'Loudspeaker, amplified',
  group: 'audio',
  summary: 'Line in on 3.5 mm, 12 V on a barrel',
  words: ['active speaker', 'monitor'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'input', label: 'in', class: 'audio', connector: 'stereo-35-jack', side: 'left', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.3,
      minV: 9,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'left', type: 'audioLoad', contact: 'input.tip', ohms: 10_000, fullVolts: 0.3, overloadVolts: 3 },
    { id: 'right', type: 'audioLoad', contact: 'input.ring', ohms: 10_000, fullVolts: 0.3, overloadVolts: 3 },
  ],
  source: 'typical figures',
};
