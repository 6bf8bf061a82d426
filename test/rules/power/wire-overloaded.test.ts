import { wireOverloaded } from '../../../core/rules/power/wire-overloaded.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const heater = (amps: number) => made({ power: ['dc', 'two-pole-30'] }, [load('power.plus', 'power.minus', amps)]);
const on = (kind: string, amps: number) =>
  drawStation({
    units: { supply: 'switch-mode-supply', load: { made: heater(amps) } },
    cables: [['supply.out > load.power', { kind }]],
  });
/** A unit fed through the braid of a coax: its own minus is not there. */
const metal = (amps: number) =>
  made({ power: ['dc', 'two-pole-30'], link: ['rf', 'bnc-jack'] }, [load('power.plus', 'power.minus', amps)]);
const sink = made({ out: ['dc', 'two-pole-30'], link: ['rf', 'bnc-jack'] }, [
  { id: 'bond', type: 'conductor', from: 'out.minus', to: 'chassis', ohms: 0.001 },
]);

testRule(wireOverloaded, {
  // NEC 240.4(D): 18 AWG 7 A, 14 AWG 15 A.
  silent: [
    { name: '6.9 A on AWG 18', station: on('lead-awg-18', 6.9) },
    { name: '14.9 A on AWG 14', station: on('lead-awg-14', 14.9) },
  ],
  reported: [
    {
      name: '7.1 A on AWG 18',
      station: on('lead-awg-18', 7.1),
      message: 'core',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { amps: 7.1, limit: 7, moment: 'in receive', source: 'NEC 240.4(D)' },
    },
    {
      name: '10 A through a coax braid, the minus lead being cut',
      station: drawStation({
        units: { supply: 'switch-mode-supply', box: { made: sink }, load: { made: metal(10) } },
        cables: [
          ['supply.out > box.out', { kind: 'lead-awg-10' }],
          ['supply.out > load.power', { kind: 'lead-awg-10', wiring: [{ a: 'plus', b: 'plus' }] }],
          ['box.link > load.link', { kind: 'coax-rg-174' }],
        ],
      }),
      message: 'screen',
      severity: 'danger',
      at: { cable: 'r1' },
      values: { amps: 10 },
    },
  ],
});
