import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Amplifies what a receiver hears; never transmit through it. */
export const preamplifier: UnitKind = {
  name: 'Preamplifier, HF receive',
  group: 'rf',
  summary: '10 dB, 1.8 to 54 MHz; 12 V; BNC',
  words: ['lna', 'preamp', 'receive amplifier'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'bnc-jack', side: 'left', needed: 'always' },
    { id: 'receiver', label: 'receiver', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'always' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.06,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    {
      id: 'stage',
      type: 'rfPath',
      a: 'antenna',
      b: 'receiver',
      lossDb: -10,
      oneWay: true,
      saturationDbm: 18,
      maxWatts: 0.02,
      when: { powered: true },
    },
  ],
  source: 'typical figures',
};
