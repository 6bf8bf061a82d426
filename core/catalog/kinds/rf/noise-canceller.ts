import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Between antenna and receiver; its relay goes past it in sending. */
export const noiseCanceller: UnitKind = {
  name: 'Noise canceller',
  group: 'rf',
  summary: '12 V; line low to go past it, 10 ms; 150 W past; SO-239',
  words: ['noise eliminator', 'phaser'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'line', label: 'PTT', class: 'control', connector: 'phono-jack', side: 'left', needed: 'toSend' },
    { id: 'radio', label: 'radio', class: 'rf', connector: 'uhf-jack', side: 'left', needed: 'always' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'uhf-jack', side: 'right', needed: 'always' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.1,
      states: [{ when: { on: ['past'] }, amount: 0.15 }],
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bias', type: 'pullUp', contact: 'line.centre', volts: 5, ohms: 4700, when: { powered: true } },
    {
      id: 'around',
      type: 'rfPath',
      a: 'radio',
      b: 'antenna',
      lossDb: 0.3,
      isolationDb: 50,
      maxWatts: 150,
      when: { on: ['past'] },
    },
    {
      id: 'stage',
      type: 'rfPath',
      a: 'antenna',
      b: 'radio',
      lossDb: -3,
      oneWay: true,
      saturationDbm: 10,
      maxWatts: 0.05,
      when: { off: ['past'], powered: true },
    },
  ],
  actors: [
    {
      id: 'past',
      label: 'Relay past it',
      feels: { type: 'voltageBelow', contact: 'line.centre', volts: 1 },
      operateMs: 10,
      releaseMs: 8,
      does: 'changesOver',
    },
  ],
  source: 'typical figures',
};
