import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A reed relay that a transistor output can drive and a high line can bear. */
export const keyingAdapter: UnitKind = {
  name: 'Keying adapter, 200 V',
  group: 'keying',
  summary: 'Closed by a low line, 2 ms; contact 200 V, 0.5 A; own 12 V; phono',
  words: ['buffer', 'reed relay', 'amplifier keying', 'high voltage'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'line', label: 'in', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'out', label: 'out', class: 'control', connector: 'phono-jack', side: 'right', needed: 'toSend' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.03,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 12, ohms: 4700, when: { powered: true } },
    {
      id: 'reed',
      type: 'contactPair',
      from: 'out.centre',
      to: 'out.shell',
      device: 'relay',
      onOhms: 0.2,
      maxVolts: 200,
      maxAmps: 0.5,
      when: { on: ['reed'] },
    },
  ],
  actors: [
    {
      id: 'reed',
      label: 'Reed',
      feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1 },
      operateMs: 2,
      releaseMs: 1,
      bounceMs: 0.5,
      does: 'keys',
    },
  ],
  isolated: ['out.centre', 'out.shell'],
  source: 'typical figures',
};
