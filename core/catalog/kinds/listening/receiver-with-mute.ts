import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A receiver that falls silent when its mute jack is shorted. Its supply jack is the unusual way round. */
export const receiverWithMute: UnitKind = {
  name: 'Receiver with mute',
  group: 'listening',
  summary: 'Barrel centre minus, phono antenna and mute jacks, 6.35 mm phones',
  words: ['rx', 'direct conversion', 'superhet', 'centre minus', 'center negative'],
  ports: [
    {
      id: 'power',
      label: 'power',
      class: 'dc',
      connector: 'barrel-21-jack',
      side: 'left',
      needed: 'always',
      note: 'centre minus',
    },
    { id: 'mute', label: 'mute', class: 'control', connector: 'phono-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'phono-jack', side: 'right', needed: 'always' },
    { id: 'phones', label: 'phones', class: 'audio', connector: 'stereo-635-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.shell',
      minus: 'power.centre',
      law: 'current',
      amount: 0.085,
      minV: 10,
      maxV: 14.5,
      absMinV: -0.5,
      absMaxV: 15,
      reverseProtected: false,
    },
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20, overloadDbm: -10 },
    { id: 'mute-bias', type: 'pullUp', contact: 'mute.centre', volts: 5, ohms: 10_000, when: { powered: true } },
    {
      id: 'audio-left',
      type: 'audioSource',
      contact: 'phones.tip',
      volts: 0.5,
      ohms: 10,
      leastOhms: 8,
      when: { off: ['mute'], powered: true },
    },
    {
      id: 'audio-right',
      type: 'audioSource',
      contact: 'phones.ring',
      volts: 0.5,
      ohms: 10,
      leastOhms: 8,
      when: { off: ['mute'], powered: true },
    },
  ],
  actors: [
    {
      id: 'mute',
      label: 'Mute',
      feels: { type: 'voltageBelow', contact: 'mute.centre', volts: 1 },
      operateMs: 2,
      releaseMs: 30,
      does: 'mutes',
    },
  ],
  source: 'typical figures',
};
