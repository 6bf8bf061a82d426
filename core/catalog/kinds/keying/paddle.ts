import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Two levers; either closes its contact to the sleeve. */
export const paddle: UnitKind = {
  name: 'Paddle',
  group: 'keying',
  summary: 'Dot and dash levers, 3.5 mm stereo jack',
  words: ['iambic', 'squeeze', 'dual lever', 'bug', 'morse'],
  ports: [{ id: 'out', label: '', class: 'control', connector: 'stereo-35-jack', side: 'right', needed: 'toSend' }],
  elements: [
    {
      id: 'dot',
      type: 'contactPair',
      from: 'out.tip',
      to: 'out.sleeve',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 0.5,
      when: { on: ['levers'] },
    },
    {
      id: 'dash',
      type: 'contactPair',
      from: 'out.ring',
      to: 'out.sleeve',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 0.5,
      when: { on: ['levers'] },
    },
  ],
  actors: [
    {
      id: 'levers',
      label: 'Paddle',
      feels: { type: 'operator', label: 'Press the paddle' },
      operateMs: 0,
      releaseMs: 0,
      unpowered: true,
      does: 'keys',
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
