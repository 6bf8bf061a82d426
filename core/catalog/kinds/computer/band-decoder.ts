import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Turns the transceiver’s band data into switched outputs. */
export const bandDecoder: UnitKind = {
  name: 'Band decoder',
  group: 'computer',
  summary: 'Four-line band data in (D-sub 15), 12 V, six outputs on a terminal strip',
  words: ['antenna switch', 'bcd', 'automatic'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'band', label: 'band data', class: 'data', connector: 'd-sub-15-jack', side: 'left', needed: 'optional' },
    { id: 'outputs', label: 'outputs', class: 'control', connector: 'terminals-8', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.05,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bit-a', type: 'dataEnd', contact: 'band.pin1', standard: 'ttl5', role: 'listens', reference: 'band.pin8' },
    { id: 'bit-b', type: 'dataEnd', contact: 'band.pin2', standard: 'ttl5', role: 'listens', reference: 'band.pin8' },
    { id: 'bit-c', type: 'dataEnd', contact: 'band.pin3', standard: 'ttl5', role: 'listens', reference: 'band.pin8' },
    { id: 'bit-d', type: 'dataEnd', contact: 'band.pin4', standard: 'ttl5', role: 'listens', reference: 'band.pin8' },
  ],
  source: 'typical figures',
};
