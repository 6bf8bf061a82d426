import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small crystal-controlled keyed transmitter for 30 m. */
export const cwTransmitter3w: UnitKind = {
  name: 'CW transmitter, 3 W crystal',
  group: 'sending',
  summary: '10.1 MHz, barrel centre plus, BNC, 3.5 mm key jack',
  words: ['tx', 'exciter', 'qrp', 'morse', '30 m', 'keyed'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'key', label: 'key', class: 'control', connector: 'mono-35-jack', side: 'left', needed: 'toSend' },
    {
      id: 'antenna',
      label: 'antenna',
      class: 'rf',
      connector: 'bnc-jack',
      side: 'right',
      needed: 'toSend',
      minHz: 10_100_000,
      maxHz: 10_150_000,
    },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.035,
      states: [{ when: { on: ['rf'] }, amount: 0.62 }],
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'key-bias', type: 'pullUp', contact: 'key.tip', volts: 5, ohms: 4700, when: { powered: true } },
    {
      id: 'output',
      type: 'rfSource',
      port: 'antenna',
      dbm: 34.8,
      maxDbm: 36,
      minDbm: 34.8,
      minHz: 10_100_000,
      maxHz: 10_150_000,
      harmonicsDbc: -45,
      when: { on: ['rf'] },
    },
  ],
  actors: [
    {
      id: 'rf',
      label: 'RF',
      feels: { type: 'voltageBelow', contact: 'key.tip', volts: 0.8 },
      operateMs: 3,
      releaseMs: 2,
      does: 'sends',
    },
  ],
  cautions: ['Transmitting needs a licence.'],
  source: 'typical figures',
};
