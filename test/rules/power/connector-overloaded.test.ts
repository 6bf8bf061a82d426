import { connectorOverloaded } from '../../../core/rules/power/connector-overloaded.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const fed = (connector: string, [plus, minus]: [string, string], amps: number) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      load: { made: made({ power: ['dc', connector] }, [load(`power.${plus}`, `power.${minus}`, amps)]) },
    },
    cables: [['supply.out > load.power', { kind: 'lead-awg-10' }]],
  });
const barrel = (amps: number) => fed('barrel-21-jack', ['centre', 'shell'], amps);
const pole = (amps: number) => fed('two-pole-15', ['plus', 'minus'], amps);

testRule(connectorOverloaded, {
  silent: [
    // A plain barrel jack 3 A; the genderless contact for 16 to 20 AWG 15 A.
    { name: '2.9 A through a barrel', station: barrel(2.9) },
    { name: '14.9 A through a 15 A pair', station: pole(14.9) },
  ],
  reported: [
    {
      name: '3.2 A through a barrel',
      station: barrel(3.2),
      message: 'over',
      severity: 'doubt',
      at: { unit: 'load', port: 'power' },
      values: { amps: 3.2, limit: 3, cable: 'D1' },
    },
    {
      name: '22 A through a 15 A pair',
      station: pole(22),
      message: 'over',
      severity: 'danger',
      at: { unit: 'load', port: 'power' },
      values: { amps: 22, limit: 15, moment: 'in receive' },
    },
  ],
});
