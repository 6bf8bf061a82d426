import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** The battery of a car with the engine off or running. */
export const vehicleBattery: UnitKind = {
  name: 'Vehicle battery, 12 V 60 Ah',
  group: 'power',
  summary: '12.6 V with the engine off, 14.2 V running; some 600 A into a short',
  words: ['car', 'truck', 'mobile', 'starter battery'],
  ports: [{ id: 'out', label: 'posts', class: 'dc', connector: 'stud-pair', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'cells',
      type: 'battery',
      plus: 'out.plus',
      minus: 'out.minus',
      chemistry: 'leadAcid',
      ampHours: 60,
      charge: 0.9,
      sourceOhms: 0.02,
      maxVolts: 14.8,
      cutOffV: 10.5,
      amps: 60,
      peakAmps: 630,
      beyond: 'sags',
      when: { settings: { engine: 'off' } },
    },
    {
      id: 'alternator',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 14.2,
      maxVolts: 14.8,
      sourceOhms: 0.02,
      amps: 60,
      peakAmps: 630,
      beyond: 'sags',
      when: { settings: { engine: 'running' } },
    },
  ],
  settings: [
    {
      id: 'engine',
      label: 'Engine',
      options: [
        { id: 'off', label: 'off' },
        { id: 'running', label: 'running' },
      ],
      initial: 'off',
    },
  ],
  isolated: 'all',
  cautions: [
    'A short draws hundreds of amperes: put a fuse within 0.2 m of the plus post.',
    'It gives off hydrogen while it is charged: no sparks near it.',
  ],
  source: 'typical figures',
};
