import type { Actor, UnitKind } from '../../../station/schema/unit-kind.ts';

const output = (id: string, label: string): UnitKind['ports'][number] => ({
  id,
  label,
  class: 'control',
  connector: 'phono-jack',
  side: 'right',
  needed: 'optional',
});

/** A relay contact that puts the supply on an output. */
const feeds = (id: string, when: { on?: string[]; off?: string[] }): UnitKind['elements'][number] => ({
  id: `${id}-out`,
  type: 'contactPair',
  from: 'power.centre',
  to: `${id}.centre`,
  device: 'relay',
  onOhms: 0.05,
  maxVolts: 30,
  maxAmps: 2,
  when,
});

/** A relay contact that pulls an output to ground. */
const grounds = (id: string): UnitKind['elements'][number] => ({
  id: `${id}-out`,
  type: 'contactPair',
  from: `${id}.centre`,
  to: `${id}.shell`,
  device: 'relay',
  onOhms: 0.05,
  maxVolts: 30,
  maxAmps: 2,
  when: { on: [id] },
});

const step = (id: string, label: string, operateMs: number, releaseMs: number): Actor => ({
  id,
  label,
  feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1 },
  operateMs,
  releaseMs,
  does: 'keys',
});

/** Feeds a masthead preamplifier in receive and two coax relays in sending, and keys amplifier and exciter after them. */
export const sequencer12v: UnitKind = {
  name: 'Sequencer, 12 V outputs',
  group: 'changeover',
  summary: 'PTT in; 12 V for a preamplifier and two relays, then two lines to ground, 30 ms apart; 12 V; phono',
  words: ['ptt', 'tr switch', 'masthead', 'coax relay', 'vhf'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'line', label: 'PTT in', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { ...output('preamp', '1, preamplifier'), class: 'dc' },
    output('relay-one', '2, relay'),
    output('relay-two', '2, relay'),
    output('amp', '3, amplifier'),
    output('exciter', '4, exciter'),
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.05,
      states: [{ when: { on: ['exciter'] }, amount: 0.15 }],
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 5, ohms: 4700, when: { powered: true } },
    feeds('preamp', { off: ['preamp'] }),
    { id: 'preamp-minus', type: 'conductor', from: 'preamp.shell', to: 'power.shell', ohms: 0.005 },
    feeds('relay-one', { on: ['relays'] }),
    feeds('relay-two', { on: ['relays'] }),
    grounds('amp'),
    grounds('exciter'),
  ],
  actors: [
    step('preamp', 'Step 1, preamplifier off', 0, 90),
    step('relays', 'Step 2, antenna relays', 30, 60),
    step('amp', 'Step 3, amplifier', 60, 30),
    step('exciter', 'Step 4, exciter', 90, 0),
  ],
  source: 'typical figures',
};
