import { transmitIntoTransmitter } from '../../../core/rules/rf/transmit-into-transmitter.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A selector whose open side isolates by so much. */
const selector = (isolationDb: number) =>
  made(
    { common: ['rf', 'uhf-jack'], one: ['rf', 'uhf-jack'], two: ['rf', 'uhf-jack'] },
    (['one', 'two'] as const).map((position) => ({
      id: position,
      type: 'rfPath',
      a: 'common',
      b: position,
      lossDb: 0,
      isolationDb,
      when: { settings: { position } },
    })),
    {
      settings: [
        {
          id: 'position',
          label: 'Position',
          options: [
            { id: 'one', label: '1' },
            { id: 'two', label: '2' },
          ],
          initial: 'one',
        },
      ],
    },
  );
const shared = (isolationDb: number) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      one: 'transceiver-100w',
      two: 'transceiver-100w',
      selector: { made: selector(isolationDb) },
      load: 'dummy-load-100w',
    },
    cables: [
      'supply.out > one.power',
      ['one.antenna > selector.one', { lengthM: 0 }],
      ['two.antenna > selector.two', { lengthM: 0 }],
      ['selector.common > load.input', { lengthM: 0 }],
    ],
  });

testRule(transmitIntoTransmitter, {
  // 50 dBm and 36 dB of isolation leave 14 dBm.
  silent: [{ name: '36 dB between the two', station: shared(36) }],
  reported: [
    {
      name: '25 dB between the two',
      station: shared(25),
      message: 'reaches',
      severity: 'doubt',
      at: { unit: 'two', port: 'antenna' },
      values: { level: 25, transmitter: 'one', other: 'two' },
    },
    {
      name: '15 dB between the two',
      station: shared(15),
      message: 'reaches',
      severity: 'danger',
      at: { unit: 'two', port: 'antenna' },
      values: { level: 35, watts: 10 ** 0.5 },
    },
  ],
});
