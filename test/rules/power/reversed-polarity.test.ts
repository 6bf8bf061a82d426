import { reversedPolarity } from '../../../core/rules/power/reversed-polarity.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

// The receiver's barrel is centre minus; the usual ready-made lead is centre plus.
const swapped = {
  wiring: [
    { a: 'plus', b: 'shell' },
    { a: 'minus', b: 'centre' },
  ],
};
const straight = {
  wiring: [
    { a: 'plus', b: 'centre' },
    { a: 'minus', b: 'shell' },
  ],
};
const units = { supply: 'bench-supply', receiver: 'receiver-with-mute' };

testRule(reversedPolarity, {
  silent: [
    {
      name: 'a centre-minus receiver on a lead made for it',
      station: drawStation({ units, cables: [['supply.out > receiver.power', swapped]] }),
    },
    {
      name: 'a centre-plus transmitter on the usual lead',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: ['supply.out > tx.power'],
      }),
    },
    { name: 'nothing plugged in', station: drawStation({ units }) },
  ],
  reported: [
    {
      name: 'a centre-minus receiver on the usual lead',
      station: drawStation({ units, cables: [['supply.out > receiver.power', straight]] }),
      message: 'reversed',
      severity: 'danger',
      at: { unit: 'receiver', port: 'power' },
      // Pulled out, the plug reads what the supply holds with nothing on it: 13.8 V, the other way round.
      values: { volts: -13.8, minV: 10, maxV: 14.5, cable: 'D1' },
    },
    {
      name: 'two leads in one jack, the second one crossed',
      station: drawStation({
        units: { supply: 'bench-supply', rig: 'transceiver-100w' },
        cables: [
          'supply.out > rig.power',
          [
            'supply.out > rig.power',
            {
              wiring: [
                { a: 'plus', b: 'minus' },
                { a: 'minus', b: 'plus' },
              ],
            },
          ],
        ],
      }),
      message: 'protected',
      unmasks: ['power/supply-overloaded', 'keying/keying-unsettled'],
      severity: 'fault',
      at: { unit: 'rig', port: 'power' },
      values: { cable: 'D2' },
    },
    {
      name: 'a protected unit stays dead',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: [
          [
            'supply.out > rig.power',
            {
              wiring: [
                { a: 'plus', b: 'minus' },
                { a: 'minus', b: 'plus' },
              ],
            },
          ],
        ],
      }),
      message: 'protected',
      unmasks: ['rf/transmit-into-nothing'],
      severity: 'fault',
      at: { unit: 'rig', port: 'power' },
      values: { volts: -13.8 },
    },
  ],
});
