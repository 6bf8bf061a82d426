import { expect, it } from 'vitest';
import { noMute } from '../../../core/rules/keying/no-mute.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { type Drawing, drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';
import { rg58 } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

const centreMinus = {
  wiring: [
    { a: 'plus', b: 'shell' },
    { a: 'minus', b: 'centre' },
  ],
};
/** A keyed station of so many dBm with a changeover by its line. */
const units = (dbm = 34.8) => ({
  supply: 'bench-supply',
  over: 'changeover-by-line',
  tx: { kind: 'cw-transmitter-3w', overrides: { 'output.dbm': dbm } },
  key: 'straight-key',
  wire: 'wire-antenna',
});
const cables: NonNullable<Drawing['cables']> = [
  'supply.out > over.power',
  'supply.out > tx.power',
  'key.out > over.line',
  'over.key > tx.key',
  'over.transmitter > tx.antenna',
  'over.antenna > wire.feed',
  'over.receiver > receiver.antenna',
];
const feed: NonNullable<Drawing['cables']>[number] = ['supply.out > receiver.power', centreMinus];
const receiver = 'receiver-with-mute';
/** What is left after the relay (0.2 dB), its open side (35 dB) and two cables of 0.6 m. */
const leak = (dbm: number) => dbm - 0.2 - 35 - 1.2 * rg58;

testRule(noMute, {
  silent: [
    {
      name: 'a mute line from the changeover',
      station: drawStation({ units: { ...units(), receiver }, cables: [...cables, feed, 'over.mute > receiver.mute'] }),
    },
    {
      name: 'a mute line to a receiver that only lacks its power',
      station: drawStation({ units: { ...units(), receiver }, cables: [...cables, 'over.mute > receiver.mute'] }),
    },
    {
      // −5 dBm leave −40.3 dBm: more than 30 dB below the −10 dBm that block it.
      name: 'too little to matter',
      station: drawStation({ units: { ...units(-5), receiver }, cables: [...cables, feed] }),
    },
    {
      name: 'a transceiver mutes itself',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', dipole: 'dipole' },
        cables: ['supply.out > rig.power', 'rig.antenna > dipole.feed'],
      }),
    },
  ],
  reported: [
    {
      name: 'nothing in the mute jack',
      station: drawStation({ units: { ...units(), receiver }, cables: [...cables, feed] }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'receiver', port: 'mute' },
      values: { level: leak(34.8), receiver: 'receiver', transmitter: 'tx', mute: 'receiver · mute' },
      within: 0.002,
      moments: ['sending'],
    },
    {
      name: 'nothing in the mute jack, and no power either',
      station: drawStation({ units: { ...units(), receiver }, cables }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'receiver', port: 'mute' },
    },
    {
      name: 'just within 30 dB of what blocks it',
      // −4.5 − 35.27 = −39.8 dBm.
      station: drawStation({ units: { ...units(-4.5), receiver }, cables: [...cables, feed] }),
      message: 'open',
      severity: 'doubt',
      at: { unit: 'receiver', port: 'mute' },
      values: { level: leak(-4.5) },
    },
    {
      name: 'the mute line of a box that never goes over, in one of two hook-ups',
      station: drawStation({
        units: { ...units(), receiver, idle: 'changeover-sensing-rf' },
        cables: [
          ...cables,
          feed,
          ['receiver.mute > idle.mute', { hookups: ['wrong'] }],
          ['receiver.mute > over.mute', { hookups: ['right'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'unmuted',
      severity: 'fault',
      at: { unit: 'receiver', port: 'mute' },
      values: { level: leak(34.8) },
      within: 0.002,
      hookups: ['wrong'],
    },
    {
      name: 'a receiver that has no mute',
      station: drawStation({
        units: { ...units(), receiver: 'receiver-without-mute' },
        cables: [...cables, 'supply.out > receiver.power'],
      }),
      message: 'noInput',
      severity: 'fault',
      at: { unit: 'receiver' },
      values: { level: leak(34.8) },
      within: 0.002,
    },
  ],
});

it.each(['@joint', 'chassis'])('a receiver that is muted from %s, within its box, has no mute input', (contact) => {
  const station: Station = structuredClone(sample('hut-amplifier'));
  for (const actor of station.kinds['receiver-with-mute']?.actors ?? [])
    if (actor.does === 'mutes') actor.feels = { type: 'voltageBelow', contact, volts: -100 };
  const found = survey(station).findings.filter((f) => f.rule === 'keying/no-mute');
  expect(found.map((f) => f.message).join()).toMatch(/it has no mute input/);
});
