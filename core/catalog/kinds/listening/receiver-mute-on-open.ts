import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** An older receiver that hears only while its mute contacts are joined. */
export const receiverMuteOnOpen: UnitKind = {
  name: 'Receiver, mute on open',
  group: 'listening',
  summary: '13.8 V; hears while the mute jack is shorted; phono and SO-239, 6.35 mm phones',
  words: ['rx', 'older', 'boatanchor', 'standby'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'binding-posts', side: 'left', needed: 'always' },
    {
      id: 'mute',
      label: 'mute',
      class: 'control',
      connector: 'phono-jack',
      side: 'left',
      needed: 'always',
      note: 'shorted to hear',
    },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'always' },
    { id: 'phones', label: 'phones', class: 'audio', connector: 'mono-635-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.plus',
      minus: 'power.minus',
      law: 'current',
      amount: 0.6,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 23, overloadDbm: -5 },
    { id: 'mute-bias', type: 'pullUp', contact: 'mute.centre', volts: 12, ohms: 10_000, when: { powered: true } },
    {
      id: 'audio',
      type: 'audioSource',
      contact: 'phones.tip',
      volts: 1,
      ohms: 50,
      leastOhms: 8,
      when: { off: ['mute'], powered: true },
    },
  ],
  actors: [
    {
      id: 'mute',
      label: 'Mute',
      feels: { type: 'voltageAbove', contact: 'mute.centre', volts: 6 },
      operateMs: 2,
      releaseMs: 20,
      does: 'mutes',
    },
  ],
  source: 'typical figures',
};
