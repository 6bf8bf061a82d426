import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Charges a battery from a panel; its output is the battery itself. */
export const solarChargeController: UnitKind = {
  name: 'Solar charge controller, 10 A',
  group: 'power',
  summary: 'Panel to 50 V, battery and load terminals; common minus',
  words: ['regulator', 'mppt', 'pwm', 'charger', 'photovoltaic'],
  ports: [
    { id: 'panel', label: 'panel', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'battery', label: 'battery', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'load', label: 'load', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'regulator',
      type: 'converter',
      plus: 'panel.plus',
      minus: 'panel.minus',
      outPlus: 'battery.plus',
      outMinus: 'battery.minus',
      minV: 15,
      maxV: 45,
      absMaxV: 50,
      outVolts: 13.6,
      outOhms: 0.15,
      outAmps: 10,
      efficiency: 0.95,
      idleWatts: 0.2,
    },
    {
      id: 'load-plus',
      type: 'conductor',
      from: 'battery.plus',
      to: 'load.plus',
      ohms: 0.01,
      fuseAmps: 10,
      fuseFamily: 'blade',
    },
    { id: 'load-minus', type: 'conductor', from: 'battery.minus', to: 'load.minus', ohms: 0.002 },
  ],
  isolated: 'all',
  cautions: ['Connect the battery first and the panel last.'],
  source: 'typical figures',
};
