import { fuseOverWire } from '../../../core/rules/power/fuse-over-wire.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** One lead of a kind with a fuse in it, the supply at either end. */
const lead = (kind: string, amps: number, route = 'supply.out > tx.power') =>
  drawStation({
    units: { supply: 'switch-mode-supply', tx: 'cw-transmitter-3w' },
    cables: [[route, { kind, fuse: { amps, family: 'blade', atM: 0.1 } }]],
  });
/** The strip's 5 A fuses on a lead of a kind, and what hangs behind it. */
const onStrip = (kind: string, fuse = 5) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      strip: { kind: 'fused-strip', overrides: { 'fuse-two.fuseAmps': fuse } },
      box: 'jack-box',
      tx: 'cw-transmitter-3w',
    },
    cables: [
      ['supply.out > strip.input', { kind: 'lead-awg-10' }],
      ['strip.two > box.input', { kind: 'lead-awg-14' }],
      ['box.three > tx.power', { kind }],
    ],
  });

testRule(fuseOverWire, {
  silent: [
    { name: '15 A on AWG 14, just what it stands (NEC 240.4(D))', station: lead('lead-awg-14', 15) },
    {
      name: '5 A of the strip on AWG 22, just what it stands (AC 43.13-1B table 11-3)',
      station: onStrip('lead-awg-22'),
    },
    {
      name: 'a thin wire on a supply’s side of the fuse, which another rule judges',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w' },
        cables: [
          ['supply.out > strip.input', { kind: 'lead-awg-24' }],
          ['strip.one > tx.power', { kind: 'lead-awg-18' }],
        ],
      }),
    },
  ],
  reported: [
    {
      // NEC 400.5: 0.80 for four to six conductors; 15 A × 0.80 = 12 A.
      name: '15 A on AWG 14 in a bundle of five conductors',
      station: { ...lead('lead-awg-14', 15), settings: { bundled: 5 } },
      message: 'over',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { rated: 15, limit: 12, source: 'NEC 240.4(D), × 0.80 as one of 5 in a bundle' },
    },
    {
      // NEC 310.15(B)(1), 60 °C insulation at 46 to 50 °C: 0.58; √(10/30) is 0.577, of 15 A 8.66 A.
      name: '10 A on AWG 14 in a loft at 50 °C',
      station: { ...lead('lead-awg-14', 10), settings: { ambientCelsius: 50 } },
      message: 'over',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { rated: 10, limit: 15 * Math.sqrt(1 / 3) },
    },
    {
      name: '20 A on AWG 14',
      station: lead('lead-awg-14', 20),
      message: 'over',
      severity: 'danger',
      at: { cable: 'd1' },
      // 33 CFR 183.425 table 5 has 20 A for 14 AWG at 60 °C; 183.455(c) lets the fuse be 150 % of it.
      values: {
        rated: 20,
        limit: 15,
        wire: 'AWG 14',
        source: 'NEC 240.4(D)',
        cable: 'D1',
        upper:
          ' The most that any rule allows, on boats, is 30 A (33 CFR 183.455(c), 150 % of 33 CFR 183.425 table 5, 60 °C).',
      },
    },
    {
      name: 'the same lead laid from the load to the supply',
      station: lead('lead-awg-24', 3, 'tx.power > supply.out'),
      message: 'over',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { rated: 3, limit: 2.5, wire: 'AWG 24', source: 'AC 43.13-1B table 11-9' },
    },
    {
      name: 'a thin lead two boxes behind the strip’s fuse; the thicker one before it is fine',
      station: onStrip('lead-awg-22', 7.5),
      message: 'over',
      severity: 'danger',
      at: { unit: 'strip', port: 'two' },
      values: { rated: 7.5, limit: 5, wire: 'AWG 22', cable: 'D3', fuse: 'The fuse of strip · 2' },
    },
    {
      name: 'a metric lead takes the figure of the next thinner gauge',
      // 1.5 mm² lies between 16 AWG (1.31 mm², 10 A) and 14 AWG (2.08 mm²).
      station: lead('lead-1.5-mm2', 15),
      message: 'over',
      severity: 'danger',
      at: { cable: 'd1' },
      values: { limit: 10, wire: '1.5 mm²' },
    },
    {
      name: 'a thinner lead in one of two hook-ups',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w' },
        cables: [
          'supply.out > strip.input',
          ['strip.four > tx.power', { hookups: ['home'] }],
          ['strip.four > tx.power', { kind: 'lead-awg-24', hookups: ['field'] }],
        ],
        hookups: [
          { id: 'home', name: 'Home' },
          { id: 'field', name: 'Field' },
        ],
      }),
      message: 'over',
      severity: 'danger',
      at: { unit: 'strip', port: 'four' },
      values: { rated: 5, limit: 2.5, cable: 'D3' },
      hookups: ['field'],
    },
  ],
});
