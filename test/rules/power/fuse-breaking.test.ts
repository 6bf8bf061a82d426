import { fuseBreaking } from '../../../core/rules/power/fuse-breaking.ts';
import type { Cable } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { awg, joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

/** A transceiver on a supply through 3 m of AWG 10 with a fuse so far from the supply. */
const rig = (supply: string, atM: number, fuse: Partial<NonNullable<Cable['fuse']>> = {}) =>
  drawStation({
    units: { supply, rig: 'transceiver-100w' },
    cables: [
      [
        'supply.out > rig.power',
        { kind: 'lead-awg-10', lengthM: 3, fuse: { amps: 30, family: 'blade', atM, ...fuse } },
      ],
    ],
  });

/** A strip of 5 A blade fuses on a battery, with a fuse of its own at the battery. */
const behindMain = (breakingAmps: number) =>
  drawStation({
    units: { supply: 'lead-acid-battery', strip: 'fused-strip', tx: 'cw-transmitter-3w' },
    cables: [
      [
        'supply.out > strip.input',
        { kind: 'lead-awg-10', lengthM: 0.3, fuse: { amps: 30, family: 'blade', atM: 0.1, breakingAmps } },
      ],
      ['strip.one > tx.power', { kind: 'lead-awg-18', lengthM: 1 }],
    ],
  });

// 28 Ah glass-mat battery: 12.85 V rested and full, 6 mΩ (data sheet, typical).
const battery = { volts: 12.85, ohms: 0.006 };
const shortAt = (metres: number) => battery.volts / (battery.ohms + joint.stud + metres * awg[10]);

testRule(fuseBreaking, {
  silent: [
    {
      name: 'a supply that holds its current limit, and a glass fuse',
      station: rig('bench-supply', 0.1, { amps: 5, family: 'glass-fast' }),
    },
    { name: 'a supply that switches off at 30 A', station: rig('switch-mode-supply', 0.1) },
    {
      name: 'a small LiFePO4 battery: 13.6 V behind 40 mΩ is 340 A, a blade fuse breaks 1000 A',
      station: rig('lifepo4-battery', 0.1),
    },
    {
      name: 'the same battery, a fuse that breaks 6 kA by its sheet',
      station: rig('lead-acid-battery', 0.1, { breakingAmps: 6000 }),
    },
    { name: 'small fuses backed up by a main fuse that breaks 6 kA', station: behindMain(6000) },
    {
      // 12.85 V / (6 mΩ + 0.2 mΩ + 3 × 3.28 mΩ) is 801 A.
      name: 'a blade fuse at the far end: the lead itself keeps the short below 1000 A',
      station: rig('lead-acid-battery', 3),
    },
  ],
  reported: [
    {
      name: 'a blade fuse at a 28 Ah battery',
      station: rig('lead-acid-battery', 0.1),
      message: 'breaks',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { breaks: 1000, amps: shortAt(0.1), supply: 'supply' },
    },
    {
      name: 'a quick glass fuse of 10 A there: it breaks 100 A',
      station: rig('lead-acid-battery', 0.1, { amps: 10, family: 'glass-fast' }),
      message: 'breaks',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { breaks: 100, amps: shortAt(0.1) },
    },
    {
      name: 'a strip’s fuses behind a main fuse that can’t break it either: its own ohms count, 1.97 mΩ cold',
      station: behindMain(1000),
      message: 'breaks',
      severity: 'doubt',
      at: { unit: 'strip', port: 'one' },
      values: { amps: battery.volts / (battery.ohms + 2 * joint.stud + 0.3 * awg[10] + 0.00197) },
    },
  ],
});
