import { loadOverpowered } from '../../../core/rules/rf/load-overpowered.ts';
import type { Plan } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { rg58 } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

/** A keyed transmitter of so many dBm on the small dummy load: 5 W continuous, 10 W for 30 s. */
const onSmallLoad = (dbm: number, plan: Partial<Plan> = {}) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      tx: { kind: 'cw-transmitter-5w', overrides: { 'output.dbm': dbm } },
      key: 'straight-key',
      load: 'dummy-load-5w',
    },
    cables: ['supply.out > tx.power', 'key.out > tx.key', 'tx.antenna > load.input'],
    plan,
  });
const watts = (dbm: number) => 10 ** ((dbm - 30) / 10);
const afterCable = (dbm: number) => watts(dbm - 0.6 * rg58);

const amplified = (exciterDbm: number) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      big: 'switch-mode-supply',
      tx: { kind: 'cw-transmitter-5w', overrides: { 'output.dbm': exciterDbm } },
      key: 'straight-key',
      amplifier: 'amplifier-40w',
      load: 'dummy-load-100w',
    },
    cables: [
      'supply.out > tx.power',
      'big.out > amplifier.power',
      'key.out > tx.key',
      'key.out > amplifier.key',
      'tx.antenna > amplifier.input',
      'amplifier.output > load.input',
    ],
  });

testRule(loadOverpowered, {
  silent: [
    // 37 dBm are 5.01 W; the cable's 0.04 dB leave 4.97 W.
    { name: 'hardly less than it takes', station: onSmallLoad(37) },
    {
      // 3 W of drive, of the 5 W that the amplifier takes; 40 W come out of it.
      name: 'an amplifier that gets the drive it wants',
      station: amplified(34.8),
    },
    {
      name: '100 W through tuner, filter and arrestor',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          filter: 'low-pass-filter',
          tuner: 'manual-tuner',
          arrestor: 'arrestor',
          dipole: 'dipole',
        },
        cables: [
          'supply.out > rig.power',
          'rig.antenna > filter.transmitter',
          'filter.antenna > tuner.transmitter',
          'tuner.antenna > arrestor.station',
          'arrestor.antenna > dipole.feed',
        ],
      }),
    },
  ],
  reported: [
    {
      // 38.5 dBm are 7 W: 2.8 W on average at 40 %, for half a minute at a time.
      name: 'more than it takes for long, on average less',
      station: onSmallLoad(38.5),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'load', port: 'input' },
      values: { watts: afterCable(38.5), limit: 5, seconds: 30, average: 0.4 * afterCable(38.5) },
      moments: ['sending'],
    },
    {
      name: 'the same with data, which never pauses',
      station: onSmallLoad(38.5, { mode: 'data', duty: 1 }),
      message: 'average',
      severity: 'danger',
      at: { unit: 'load', port: 'input' },
      values: { watts: afterCable(38.5), average: afterCable(38.5), limit: 5 },
    },
    {
      name: 'an oil load that takes it for ten minutes is sent into for a test',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          tx: { kind: 'transceiver-100w', overrides: { 'output.dbm': 60, 'output.maxDbm': 60 } },
          key: 'straight-key',
          load: 'dummy-load-1500w',
        },
        cables: ['supply.out > tx.power', 'key.out > tx.key', 'tx.antenna > load.input'],
      }),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'load', port: 'input' },
      values: { limit: 200, seconds: 600 },
    },
    {
      name: 'more than it takes at all',
      station: onSmallLoad(40.2),
      message: 'peak',
      severity: 'danger',
      at: { unit: 'load', port: 'input' },
      values: { watts: afterCable(40.2), limit: 10, transmitter: 'tx' },
    },
    {
      name: '100 W through a 15 W meter, in one of two hook-ups',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', meter: 'swr-meter', dipole: 'dipole' },
        cables: [
          'supply.out > rig.power',
          ['rig.antenna > dipole.feed', { hookups: ['plain'] }],
          ['dipole.feed > meter.antenna', { hookups: ['metered'] }],
          ['meter.transmitter > rig.antenna', { hookups: ['metered'] }],
        ],
        hookups: [
          { id: 'plain', name: 'Plain' },
          { id: 'metered', name: 'Metered' },
        ],
      }),
      message: 'peak',
      severity: 'danger',
      at: { unit: 'meter', port: 'transmitter' },
      values: { watts: afterCable(50), limit: 15 },
      hookups: ['metered'],
    },
    {
      // 34.8 dBm and 11.3 dB of gain are 46.1 dBm, 40 W: the small meter behind the amplifier shows what it is for.
      name: 'a meter that was enough without the amplifier',
      station: drawStation({
        units: {
          supply: 'bench-supply',
          big: 'switch-mode-supply',
          tx: 'cw-transmitter-3w',
          key: 'straight-key',
          amplifier: 'amplifier-40w',
          meter: 'swr-meter',
          dipole: 'dipole',
        },
        cables: [
          'supply.out > tx.power',
          'big.out > amplifier.power',
          'key.out > tx.key',
          'key.out > amplifier.key',
          'tx.antenna > amplifier.input',
          'amplifier.output > meter.transmitter',
          'meter.antenna > dipole.feed',
        ],
      }),
      message: 'peak',
      severity: 'danger',
      at: { unit: 'meter', port: 'transmitter' },
      values: { watts: watts(34.8 + 11.3 - 1.2 * rg58), limit: 15 },
    },
  ],
});
