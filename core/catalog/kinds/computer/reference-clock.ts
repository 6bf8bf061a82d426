import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** 10 MHz from satellites, for transverters and counters. */
export const referenceClock: UnitKind = {
  name: 'Reference clock, 10 MHz',
  group: 'computer',
  summary: '12 V; 10 MHz +13 dBm on BNC; satellite antenna on SMA',
  words: ['gpsdo', 'frequency standard', '10 mhz'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    {
      id: 'satellite',
      label: 'satellite antenna',
      class: 'rf',
      connector: 'sma-jack',
      side: 'left',
      needed: 'optional',
      limits: { centre: { minV: -1, maxV: 6 } },
    },
    { id: 'out', label: '10 MHz', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.8,
      minV: 11,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'bias', type: 'conductor', from: '@five', to: 'satellite.centre', ohms: 10 },
    {
      id: 'antenna-feed',
      type: 'supply',
      plus: '@five',
      minus: 'satellite.shell',
      volts: 5,
      sourceOhms: 1,
      amps: 0.05,
      peakAmps: 0.1,
      beyond: 'limits',
    },
  ],
  source: 'typical figures',
};
