import { harmonicInReceiver } from '../../../core/rules/rf/harmonic-in-receiver.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { antenna } from './on-antenna.ts';

/** A transmitter on 145 MHz and a receiver for another band, so many decibels apart. */
function duplex(lossDb: number, [minHz, maxHz]: [number, number] = [430e6, 440e6]): Station {
  const station = drawStation({
    units: {
      supply: 'switch-mode-supply',
      uplink: {
        kind: 'transceiver-vhf-mobile-50w',
        overrides: { 'output.dbm': 50, 'output.maxDbm': 50, 'output.harmonicsDbc': -60 },
      },
      one: { made: antenna(50) },
      two: { made: antenna(50) },
      downlink: {
        made: made({ antenna: ['rf', 'n-jack', { minHz, maxHz }] }, [
          { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20, overloadDbm: 15 },
        ]),
      },
    },
    cables: [
      'supply.out > uplink.power',
      ['uplink.antenna > one.feed', { lengthM: 0 }],
      ['two.feed > downlink.antenna', { lengthM: 0 }],
    ],
    plan: { frequencyHz: 145_000_000 },
  });
  const ends = { a: { unit: 'one', port: 'feed' }, b: { unit: 'two', port: 'feed' } };
  return { ...station, couplings: [{ ...ends, lossDb }] };
}

testRule(harmonicInReceiver, {
  silent: [
    { name: 'a receiver for 10 GHz', station: duplex(20, [10e9, 10.5e9]) },
    { name: '130 dB between them', station: duplex(130) },
  ],
  reported: [
    {
      // 3 × 145 is 435 MHz; 50 dBm − 60 dB − 20 dB.
      name: 'the third harmonic of 145 MHz in a satellite’s downlink',
      station: duplex(20),
      message: 'heard',
      severity: 'doubt',
      at: { unit: 'downlink', port: 'antenna' },
      values: { order: '3', frequency: '435.000', level: -30 },
    },
  ],
});
