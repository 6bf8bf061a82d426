import { lineLoss } from '../../../core/rules/rf/line-loss.ts';
import { rg58 } from '../ohms.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

/** Metres of RG-58 for so many decibels at 14.06 MHz. */
const metres = (db: number) => db / rg58;

testRule(lineLoss, {
  silent: [{ name: '1.4 dB of cable', station: onAntenna({ line: { lengthM: metres(1.4) } }) }],
  reported: [
    {
      name: '2 dB of cable',
      station: onAntenna({ line: { lengthM: metres(2) } }),
      message: 'matched',
      severity: 'doubt',
      at: { cable: 'r1' },
      values: { watts: 100 * 10 ** -0.2, from: 100, loss: '2.0', cable: 'R1' },
    },
    {
      // ARRL Handbook, loss at SWR: a = 1.259 and rho² = 0.510 make 2.41 dB of 1 dB.
      name: '1 dB of cable at an SWR of 6',
      station: onAntenna({ ohms: 300, line: { lengthM: metres(1) } }),
      message: 'mismatched',
      severity: 'doubt',
      at: { cable: 'r1' },
      values: { loss: '2.4', added: '1.4' },
    },
  ],
});
