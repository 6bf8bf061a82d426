import { returnThroughShield } from '../../../core/rules/power/return-through-shield.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { awg, joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

/** Two metal boxes on one supply, joined by a coax: the heavy one's current goes home by both minus leads. */
const boxes = (amps: number, metres: number) => {
  const box = (draws: number) =>
    made({ power: ['dc', 'two-pole-30'], link: ['rf', 'bnc-jack'] }, [load('power.plus', 'power.minus', draws)]);
  return drawStation({
    units: { supply: 'switch-mode-supply', heavy: { made: box(amps) }, light: { made: box(0) } },
    cables: [
      ['supply.out > heavy.power', { kind: 'lead-awg-14', lengthM: metres }],
      ['supply.out > light.power', { kind: 'lead-awg-14', lengthM: metres }],
      ['heavy.link > light.link', { kind: 'coax-rg-58', lengthM: 0.6 }],
    ],
  });
};
/** A contact of the 30 A pair: 16 mV at 37 A. */
const pole30 = 0.016 / 37;
/** The lead of 2 m, both joints; and the way over the braid (14 mΩ/m), the screws of both boxes, and the other lead. */
const lead = joint.stud + 2 * awg[14] + pole30;
const over = 4 * 0.005 + 0.6 * 0.014 + 2 * joint.bnc + lead;
const share = lead / (lead + over);

testRule(returnThroughShield, {
  silent: [
    { name: 'a share of 2 A', station: boxes(2, 2) },
    { name: 'short thick leads keep it out', station: boxes(2.5, 0.3) },
  ],
  reported: [
    {
      name: 'a share of 14 A',
      station: boxes(14, 2),
      message: 'shared',
      severity: 'doubt',
      at: { cable: 'r1' },
      values: { amps: 14 * share, limit: 3 },
      within: 0.005,
    },
  ],
});
