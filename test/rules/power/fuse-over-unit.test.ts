import { fuseOverUnit } from '../../../core/rules/power/fuse-over-unit.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const fused = (amps: number, draws: number) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      load: { made: made({ power: ['dc', 'two-pole-30'] }, [load('power.plus', 'power.minus', draws)]) },
    },
    cables: [['supply.out > load.power', { fuse: { amps, family: 'blade', atM: 0.1 } }]],
  });

testRule(fuseOverUnit, {
  silent: [
    { name: 'twice the current', station: fused(10, 5) },
    { name: 'the smallest usual fuses, however little is drawn', station: fused(5, 0.045) },
    { name: 'hardly less than five times', station: fused(10, 2.01) },
    { name: 'a fuse with nothing behind it', station: fused(10, 0) },
  ],
  reported: [
    {
      name: '15 A before a unit that draws 0.3 A',
      station: fused(15, 0.3),
      message: 'over',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { rated: 15, amps: 0.3 },
    },
  ],
});
