import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Makes dots and dashes from a paddle; runs from its own cell. */
export const keyer: UnitKind = {
  name: 'Keyer',
  group: 'keying',
  summary: 'Own cell; paddle 3.5 mm stereo, key out 3.5 mm mono, positive lines only',
  words: ['electronic keyer', 'iambic', 'memory keyer', 'morse'],
  ports: [
    { id: 'paddle', label: 'paddle', class: 'control', connector: 'stereo-35-jack', side: 'left', needed: 'toSend' },
    { id: 'out', label: 'key out', class: 'control', connector: 'mono-35-jack', side: 'right', needed: 'toSend' },
  ],
  elements: [
    { id: 'dot-bias', type: 'pullUp', contact: 'paddle.tip', volts: 3, ohms: 10_000 },
    { id: 'dash-bias', type: 'pullUp', contact: 'paddle.ring', volts: 3, ohms: 10_000 },
    {
      id: 'output',
      type: 'contactPair',
      from: 'out.tip',
      to: 'out.sleeve',
      device: 'transistor',
      onOhms: 1.5,
      maxVolts: 30,
      maxAmps: 0.2,
      when: { on: ['keying'] },
    },
  ],
  actors: [
    {
      id: 'keying',
      label: 'Keying',
      feels: [
        { type: 'voltageBelow', contact: 'paddle.tip', volts: 1 },
        { type: 'voltageBelow', contact: 'paddle.ring', volts: 1 },
      ],
      operateMs: 1,
      releaseMs: 1,
      does: 'keys',
    },
  ],
  source: 'typical figures',
};
