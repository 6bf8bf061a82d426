import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Diodes instead of contacts: microseconds, no bounce. */
export const pinSwitch: UnitKind = {
  name: 'PIN diode switch, 100 W',
  group: 'changeover',
  summary: 'Line low to send; 0.3 dB, 60 dB; 12 V; SO-239',
  words: ['electronic', 'qsk', 'break-in'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'line', label: 'PTT', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'receiver', label: 'receiver', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
    { id: 'transmitter', label: 'transmitter', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'toSend' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'always' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.08,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 5, ohms: 4700, when: { powered: true } },
    {
      id: 'receive',
      type: 'rfPath',
      a: 'antenna',
      b: 'receiver',
      lossDb: 0.4,
      isolationDb: 60,
      maxWatts: 100,
      when: { off: ['over'] },
    },
    {
      id: 'send',
      type: 'rfPath',
      a: 'antenna',
      b: 'transmitter',
      lossDb: 0.3,
      isolationDb: 60,
      maxWatts: 100,
      when: { on: ['over'] },
    },
  ],
  actors: [
    {
      id: 'over',
      label: 'Over',
      feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1 },
      operateMs: 0.05,
      releaseMs: 0.05,
      does: 'changesOver',
    },
  ],
  source: 'typical figures',
};
