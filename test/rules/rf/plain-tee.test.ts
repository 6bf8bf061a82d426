import { plainTee } from '../../../core/rules/rf/plain-tee.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { antenna } from './on-antenna.ts';

/** Three ports, two ways from the first; a transceiver and two antennas on it. */
const joint = (lossDb: number, one: Partial<UnitElement> = {}, two: Partial<UnitElement> = {}, both = true) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: 'transceiver-100w',
      joint: {
        made: made({ common: ['rf', 'uhf-jack'], left: ['rf', 'uhf-jack'], right: ['rf', 'uhf-jack'] }, [
          { id: 'l', type: 'rfPath', a: 'common', b: 'left', lossDb, ...one } as UnitElement,
          { id: 'r', type: 'rfPath', a: 'common', b: 'right', lossDb, ...two } as UnitElement,
        ]),
      },
      a: { made: antenna(50) },
      b: { made: antenna(50) },
    },
    cables: [
      'supply.out > rig.power',
      'rig.antenna > joint.common',
      'joint.left > a.feed',
      ...(both ? ['joint.right > b.feed'] : []),
    ],
    plan: { frequencyHz: 14_060_000 },
  });

testRule(plainTee, {
  silent: [
    { name: 'a splitter', station: joint(3.2) },
    { name: 'a duplexer for HF and VHF', station: joint(0.3, { maxHz: 30e6 }, { minHz: 50e6 }) },
    { name: 'a tee with one way plugged', station: joint(0.1, {}, {}, false) },
  ],
  reported: [
    {
      name: 'two antennas on a tee',
      station: joint(0.1),
      message: 'tee',
      severity: 'doubt',
      at: { unit: 'joint' },
      values: { ways: 'joint · left and joint · right' },
    },
  ],
});
