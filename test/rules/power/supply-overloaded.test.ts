import { supplyOverloaded } from '../../../core/rules/power/supply-overloaded.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const heater = (amps: number) => made({ power: ['dc', 'two-pole-30'] }, [load('power.plus', 'power.minus', amps)]);
const onBench = (amps: number) =>
  drawStation({ units: { supply: 'bench-supply', load: { made: heater(amps) } }, cables: ['supply.out > load.power'] });

testRule(supplyOverloaded, {
  silent: [
    // 80 % of 3 A is 2.4 A.
    { name: 'just under four fifths', station: onBench(2.39) },
    {
      name: 'a short burst of 22 A on a battery of 28 Ah',
      station: drawStation({
        units: { battery: 'lead-acid-battery', rig: 'transceiver-100w', load: 'dummy-load-100w' },
        cables: ['battery.out > rig.power', 'rig.antenna > load.input'],
      }),
    },
    {
      // The overloaded bench supply shares its ground with the computer, whose 0.3 A are no load of its own.
      name: 'a computer beside it, joined by the coax’s shield alone',
      station: drawStation({
        units: { computer: 'computer', sdr: 'sdr-receiver-usb', tx: 'cw-transmitter-3w', supply: 'bench-supply' },
        cables: ['computer.usb-one > sdr.usb', 'supply.out > tx.power', 'tx.antenna > sdr.antenna'],
      }),
    },
  ],
  reported: [
    {
      name: 'just over four fifths',
      station: onBench(2.43),
      message: 'near',
      severity: 'doubt',
      at: { unit: 'supply' },
      values: { amps: 2.43, share: 0.81, rated: 3, moment: 'in receive' },
      moments: ['receive'],
    },
    {
      name: '13 A on 11 A while a packet radio sends; in receive there is room',
      station: drawStation({
        units: {
          supply: {
            kind: 'switch-mode-supply',
            overrides: { 'output.amps': 11, 'output.peakAmps': 14 },
          },
          packet: { kind: 'transceiver-100w', overrides: { 'draw.amount': 1, 'draw.states.0.amount': 12 } },
          modem: { made: heater(1) },
          load: 'dummy-load-100w',
        },
        cables: ['supply.out > packet.power', 'supply.out > modem.power', 'packet.antenna > load.input'],
      }),
      message: 'continuous',
      severity: 'fault',
      at: { unit: 'supply' },
      values: { amps: 12 + 1, share: 13 / 11, moment: 'in sending' },
      moments: ['sending', 'going back'],
    },
    {
      name: 'more than it can give, although what it can is nearly reached in receive already',
      station: drawStation({
        units: {
          supply: 'bench-supply',
          steady: { made: heater(2.5) },
          tx: { kind: 'cw-transmitter-5w', overrides: { 'draw.states.0.amount': 2 } },
          key: 'straight-key',
          load: 'dummy-load-5w',
        },
        cables: ['supply.out > steady.power', 'supply.out > tx.power', 'key.out > tx.key', 'tx.antenna > load.input'],
      }),
      message: 'peak',
      severity: 'fault',
      at: { unit: 'supply' },
      // 2.5 A and 2 A ask for 4.5 A of its 4 A.
      values: { amps: 4.5, peak: 4, rated: 3 },
    },
    {
      name: 'a supply that went off, with another one on the same ground',
      station: drawStation({
        units: {
          computer: 'computer',
          sdr: 'sdr-receiver-usb',
          supply: 'switch-mode-supply',
          heavy: { made: heater(35) },
          selector: 'coax-switch',
          rig: 'transceiver-100w',
        },
        cables: [
          'computer.usb-one > sdr.usb',
          'supply.out > heavy.power',
          'supply.out > rig.power',
          'selector.one > sdr.antenna',
          'selector.two > rig.antenna',
        ],
      }),
      message: 'peak',
      severity: 'fault',
      at: { unit: 'supply' },
      // 35 A and the transceiver's: it is off and asks for its 1.5 A of receive; the computer's 0.3 A are not asked of it.
      values: { amps: 36.5, peak: 30 },
    },
    {
      name: 'in one of two hook-ups only',
      station: drawStation({
        units: { supply: 'bench-supply', one: { made: heater(2) }, two: { made: heater(1.5) } },
        cables: ['supply.out > one.power', ['supply.out > two.power', { hookups: ['both'] }]],
        hookups: [
          { id: 'alone', name: 'Alone' },
          { id: 'both', name: 'Both' },
        ],
      }),
      message: 'continuous',
      severity: 'fault',
      at: { unit: 'supply' },
      values: { amps: 3.5, share: 3.5 / 3 },
      hookups: ['both'],
    },
  ],
});
