import { returnMissing } from '../../../core/rules/power/return-missing.ts';
import type { Cable } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** A lead whose minus core is connected nowhere. */
const plusOnly = { wiring: [{ a: 'plus', b: 'centre' }] };
/** Transmitter and changeover on one supply, their coax between them; the transmitter's lead as given. */
const pair = (lead: Partial<Cable>, coax: Partial<Cable> = {}, key = true) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      over: 'changeover-by-line',
      tx: 'cw-transmitter-3w',
      ...(key && { key: 'straight-key' }),
    },
    cables: [
      'supply.out > over.power',
      ['supply.out > tx.power', lead],
      ['over.transmitter > tx.antenna', coax],
      ...(key ? ['key.out > tx.key'] : []),
    ],
  });
const hookups = [
  { id: 'desk', name: 'On the desk' },
  { id: 'outside', name: 'Outside' },
];

testRule(returnMissing, {
  silent: [
    { name: 'both cores in place', station: pair({}) },
    {
      // Minus core 2 m × 84 mΩ with its joints: 0.2 Ω. By the braid (22 mΩ), and the changeover's own minus lead
      // (45 mΩ): a third of that, so three quarters go by the braid.
      name: 'a thin minus core beside a thick braid still carries its share',
      station: pair({ kind: 'lead-awg-24', lengthM: 2 }),
    },
    {
      name: 'plus and minus both open: nothing is fed',
      station: drawStation({
        units: { strip: 'fused-strip', tx: 'cw-transmitter-3w' },
        cables: [['strip.one > tx.power', plusOnly]],
      }),
    },
    {
      name: 'a plus core that is missing is another thing',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: [['supply.out > tx.power', { wiring: [{ a: 'minus', b: 'shell' }] }]],
      }),
    },
  ],
  reported: [
    {
      name: 'the braid carries it all, 35 mA in receive and 0.62 A sending',
      station: pair(plusOnly),
      message: 'elsewhere',
      severity: 'danger',
      at: { unit: 'tx', port: 'power' },
      // Told where it is most: 0.62 A; 5 V through 4.7 kΩ of the closed key line go their own way round.
      values: { amps: 0.62, carried: 0.62, way: 'R1', moment: 'in sending' },
      within: 0.003,
    },
    {
      name: 'two ways back: the coax and a thin screened key lead; the coax carries most',
      station: drawStation({
        units: { supply: 'bench-supply', over: 'changeover-by-line', tx: 'cw-transmitter-3w' },
        cables: [
          'supply.out > over.power',
          ['tx.power > supply.out', { wiring: [{ a: 'centre', b: 'plus' }] }],
          'over.transmitter > tx.antenna',
          'over.key > tx.key',
        ],
      }),
      message: 'elsewhere',
      severity: 'danger',
      at: { unit: 'tx', port: 'power' },
      // Braid 0.6 m × 14 mΩ, two BNC joints of 2 mΩ and two screws of 5 mΩ: 22.4 mΩ. Key lead 0.6 m × 50 mΩ, two
      // joints of 20 mΩ, the screws: 80 mΩ. Of 35 mA the braid carries 80/102.4.
      values: { amps: 0.035, carried: (0.035 * 80) / 102.4, way: 'R1', moment: 'in receive' },
      within: 0.01,
    },
    {
      name: 'in the hook-up without the coax it is dead; with it the braid carries',
      station: drawStation({
        units: { supply: 'bench-supply', over: 'changeover-by-line', tx: 'cw-transmitter-3w' },
        cables: [
          'supply.out > over.power',
          ['supply.out > tx.power', plusOnly],
          ['over.transmitter > tx.antenna', { hookups: ['desk'] }],
        ],
        hookups,
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'tx', port: 'power' },
      values: { port: 'tx · power' },
      hookups: ['outside'],
    },
    {
      name: 'the strip’s own feed has no minus: every box on it is dead',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', over: 'changeover-by-line' },
        cables: [['supply.out > strip.input', { wiring: [{ a: 'plus', b: 'plus' }] }], 'strip.two > over.power'],
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'over', port: 'power' },
    },
  ],
});
