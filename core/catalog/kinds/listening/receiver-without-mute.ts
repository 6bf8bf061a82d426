import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A plain receiver: nothing silences it while the station sends. */
export const receiverWithoutMute: UnitKind = {
  name: 'Receiver, plain',
  group: 'listening',
  summary: 'No mute; barrel centre plus, BNC antenna, 3.5 mm phones',
  words: ['rx', 'direct conversion', 'superhet', 'regenerative', 'simple'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'always' },
    { id: 'phones', label: 'phones', class: 'audio', connector: 'stereo-35-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.06,
      minV: 9,
      maxV: 15,
      absMaxV: 18,
      reverseProtected: true,
    },
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20, overloadDbm: -15 },
    {
      id: 'audio-left',
      type: 'audioSource',
      contact: 'phones.tip',
      volts: 0.5,
      ohms: 10,
      leastOhms: 8,
      when: { powered: true },
    },
    {
      id: 'audio-right',
      type: 'audioSource',
      contact: 'phones.ring',
      volts: 0.5,
      ohms: 10,
      leastOhms: 8,
      when: { powered: true },
    },
  ],
  source: 'typical figures',
};
