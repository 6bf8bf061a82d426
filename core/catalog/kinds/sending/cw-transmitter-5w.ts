import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A keyed transmitter for the bands from 80 to 20 m. */
export const cwTransmitter5w: UnitKind = {
  name: 'CW transmitter, 5 W',
  group: 'sending',
  summary: '3.5 to 14.35 MHz, barrel centre plus, BNC, 3.5 mm key jack',
  words: ['tx', 'exciter', 'qrp', 'morse', 'keyed', '80 m', '40 m', '30 m', '20 m', 'vfo'],
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
      minHz: 3_500_000,
      maxHz: 14_350_000,
    },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.06,
      states: [{ when: { on: ['rf'] }, amount: 1.1 }],
      minV: 11,
      maxV: 15,
      absMaxV: 16,
      reverseProtected: true,
    },
    { id: 'key-bias', type: 'pullUp', contact: 'key.tip', volts: 5, ohms: 10_000, when: { powered: true } },
    {
      id: 'output',
      type: 'rfSource',
      port: 'antenna',
      dbm: 37,
      maxDbm: 38.5,
      minDbm: 37,
      minHz: 3_500_000,
      maxHz: 14_350_000,
      harmonicsDbc: -50,
      when: { on: ['rf'] },
    },
  ],
  actors: [
    {
      id: 'rf',
      label: 'RF',
      feels: { type: 'voltageBelow', contact: 'key.tip', volts: 1 },
      operateMs: 5,
      releaseMs: 4,
      does: 'sends',
    },
  ],
  cautions: ['Transmitting needs a licence.'],
  source: 'typical figures',
};
