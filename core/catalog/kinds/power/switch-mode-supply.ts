import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A large switch-mode supply; beyond its peak it switches off. */
export const switchModeSupply: UnitKind = {
  name: 'Switch-mode supply, 13.8 V 25 A',
  group: 'power',
  summary: 'Regulated, switches off when overloaded; threaded studs',
  words: ['psu', 'power supply', 'smps', 'switcher', '12 V', 'regulated'],
  ports: [{ id: 'out', label: 'output', class: 'dc', connector: 'stud-pair', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 13.8,
      maxVolts: 14.2,
      sourceOhms: 0.01,
      amps: 25,
      peakAmps: 30,
      beyond: 'shutsDown',
    },
  ],
  isolated: ['out.plus', 'out.minus'],
  cautions: ['Mains inside: leave the case shut.', '25 A heats a thin wire until it burns: fuse every branch.'],
  mains: true,
  source: 'typical figures',
};
