import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A short rod with an amplifier, fed over the coax. */
export const activeWhip: UnitKind = {
  name: 'Active whip',
  group: 'rf',
  summary: '10 kHz to 30 MHz; 12 V over the coax; not for transmitting; BNC',
  words: ['e-field', 'mini whip', 'listening'],
  ports: [
    {
      id: 'feed',
      label: '',
      class: 'rf',
      connector: 'bnc-jack',
      side: 'left',
      needed: 'always',
      limits: { centre: { minV: -1, maxV: 16 } },
      minHz: 10_000,
      maxHz: 30_000_000,
    },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'feed.centre',
      minus: 'feed.shell',
      law: 'current',
      amount: 0.05,
      minV: 9,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    {
      id: 'rod',
      type: 'rfLoad',
      port: 'feed',
      role: 'antenna',
      ohms: 50,
      watts: 0.01,
      minHz: 10_000,
      maxHz: 30_000_000,
      gainDbi: -10,
    },
  ],
  outdoor: true,
  cautions: ['Unplug it before a storm.', 'Never transmit into it.'],
  source: 'typical figures',
};
