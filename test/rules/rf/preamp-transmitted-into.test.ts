import { preampTransmittedInto } from '../../../core/rules/rf/preamp-transmitted-into.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** 15 dB from antenna to station while it has power; bypassed by a relay without it, if it has one. */
const preamp = (bypass: boolean) =>
  made({ power: ['dc', 'two-pole-30'], antenna: ['rf', 'bnc-jack'], station: ['rf', 'bnc-jack'] }, [
    load('power.plus', 'power.minus', 0.1),
    {
      id: 'stage',
      type: 'rfPath',
      a: 'antenna',
      b: 'station',
      oneWay: true,
      lossDb: -15,
      saturationDbm: 10,
      when: { powered: true },
    },
    ...(bypass
      ? [{ id: 'past', type: 'rfPath' as const, a: 'antenna', b: 'station', lossDb: 0.2, when: { powered: false } }]
      : []),
  ]);
const inLine = (powered: boolean) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      tx: 'cw-transmitter-3w',
      key: 'straight-key',
      preamp: { made: preamp(true) },
      load: 'dummy-load-5w',
    },
    cables: [
      'supply.out > tx.power',
      'key.out > tx.key',
      'tx.antenna > preamp.station',
      'preamp.antenna > load.input',
      ...(powered ? ['supply.out > preamp.power'] : []),
    ],
  });
/** A tee on the antenna: the preamplifier listens while the transmitter sends. */
const onTee = (lossDb: number) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      tx: 'cw-transmitter-3w',
      key: 'straight-key',
      tee: {
        made: made({ tx: ['rf', 'bnc-jack'], load: ['rf', 'bnc-jack'], tap: ['rf', 'bnc-jack'] }, [
          { id: 'through', type: 'rfPath', a: 'tx', b: 'load', lossDb: 0.1 },
          { id: 'tap', type: 'rfPath', a: 'tx', b: 'tap', lossDb },
        ]),
      },
      preamp: { made: preamp(false) },
      rx: 'receiver-without-mute',
      load: 'dummy-load-5w',
    },
    cables: [
      'supply.out > tx.power',
      'supply.out > preamp.power',
      'key.out > tx.key',
      'tx.antenna > tee.tx',
      'tee.load > load.input',
      'tee.tap > preamp.antenna',
      'preamp.station > rx.antenna',
    ],
  });

testRule(preampTransmittedInto, {
  silent: [
    { name: 'without power its relay is down, and the transmitter passes it by', station: inLine(false) },
    { name: 'a tap of 40 dB', station: onTee(40) },
  ],
  reported: [
    {
      name: 'sent into from behind: it stays on in the line of the transmitter',
      station: inLine(true),
      message: 'output',
      severity: 'danger',
      at: { unit: 'preamp', port: 'station' },
      // 3.02 W, less a hundredth of a decibel or two in the cable.
      values: { level: 34.8, limit: 10, transmitter: 'tx' },
      within: 0.002,
    },
    {
      name: 'a tap of 20 dB: 14.8 dBm where 10 is the most',
      station: onTee(20),
      message: 'input',
      severity: 'danger',
      at: { unit: 'preamp', port: 'antenna' },
      values: { level: 14.8, limit: 10 },
      within: 0.01,
    },
  ],
});
