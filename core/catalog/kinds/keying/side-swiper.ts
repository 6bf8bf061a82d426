import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One lever that makes contact on either side. */
export const sideSwiper: UnitKind = {
  name: 'Side swiper',
  group: 'keying',
  summary: 'Closes tip to sleeve either way; 3.5 mm mono',
  words: ['cootie', 'key', 'morse'],
  ports: [{ id: 'out', label: '', class: 'control', connector: 'mono-35-jack', side: 'right', needed: 'toSend' }],
  elements: [
    {
      id: 'contact',
      type: 'contactPair',
      from: 'out.tip',
      to: 'out.sleeve',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 0.5,
      when: { on: ['lever'] },
    },
  ],
  actors: [
    {
      id: 'lever',
      label: 'Lever',
      feels: { type: 'operator', label: 'Press the lever' },
      operateMs: 0,
      releaseMs: 0,
      does: 'keys',
      unpowered: true,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
