import { layCable } from '../../../core/catalog/laying/lay-cable.ts';
import { rfFeedback } from '../../../core/rules/rf/rf-feedback.ts';
import { edit } from '../../../core/station/edit.ts';
import type { PortRef, Station } from '../../../core/station/schema/schema.ts';
import type { UnitKind } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { antenna, onAntenna } from './on-antenna.ts';

const receiver = made({ antenna: ['rf', 'n-jack'] }, [
  { id: 'in', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50 },
]);

/** An amplifier of 20 dB with a bypass that isolates so much while it is not in use. */
const amplifier = (isolationDb: number) =>
  onAntenna({
    between: made(
      { in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] },
      [
        { id: 'stage', type: 'rfPath', a: 'in', b: 'out', oneWay: true, lossDb: -20, saturationDbm: 60 },
        { id: 'past', type: 'rfPath', a: 'in', b: 'out', lossDb: 0.2, isolationDb, when: { on: ['bypass'] } },
      ],
      {
        actors: [
          {
            id: 'bypass',
            label: 'Bypass',
            feels: { type: 'operator', label: 'Bypass' },
            operateMs: 0,
            releaseMs: 0,
            unpowered: true,
          },
        ],
      },
    ),
  });

// Barkhausen: a loop oscillates where its gain is above 0 dB.
testRule(rfFeedback, {
  silent: [{ name: '40 dB of isolation around 20 dB of gain', station: withoutBypass(amplifier(40)) }],
  reported: [
    {
      name: '15 dB of isolation around 20 dB of gain',
      station: amplifier(15),
      message: 'loop',
      severity: 'fault',
      at: { unit: 'unit' },
      values: { gain: '20.0' },
    },
    {
      // 10 dB of the amplifier against nothing on a coax of no length.
      name: 'a second coax from the transmitter to what is behind the amplifier',
      station: withCoax(twoStages({ one: 10, two: 0 }), 'rig.antenna', 'antenna.feed'),
      message: 'loop',
      severity: 'fault',
      at: { unit: 'one' },
      values: { gain: '10.0', loss: '0.0' },
    },
    {
      // Either alone would not make up for the 15 dB of the pad; together they have 20.
      name: 'two amplifiers in a ring with a pad that is too small for both',
      station: withCoax(twoStages({ one: 10, two: 10, padDb: 15 }), 'one.in', 'antenna.feed'),
      message: 'ring',
      severity: 'fault',
      at: { unit: 'one' },
      values: { amplifiers: 'one and two', gain: '20.0', loss: '15.0' },
    },
    {
      name: 'a preamplifier that is bridged, where nothing sends',
      station: drawStation({
        units: {
          whip: { made: antenna(50) },
          preamplifier: { made: stage(10, 0) },
          receiver: { made: receiver },
        },
        cables: [
          ['whip.feed > preamplifier.in', { lengthM: 0 }],
          ['preamplifier.out > receiver.antenna', { lengthM: 0 }],
          ['receiver.antenna > whip.feed', { lengthM: 0 }],
        ],
      }),
      message: 'loop',
      severity: 'fault',
      at: { unit: 'preamplifier' },
      values: { gain: '10.0', loss: '0.0' },
    },
  ],
});

/** An amplifier of so many dB behind a pad. */
function stage(gainDb: number, padDb: number): UnitKind {
  return made({ in: ['rf', 'n-jack'], mid: ['rf', 'n-jack'], out: ['rf', 'n-jack'] }, [
    { id: 'pad', type: 'rfPath', a: 'in', b: 'mid', lossDb: padDb },
    { id: 'stage', type: 'rfPath', a: 'mid', b: 'out', oneWay: true, lossDb: -gainDb, saturationDbm: 60 },
  ]);
}

/** A transmitter, two amplifiers in a row, the second behind a pad, an antenna. */
function twoStages({ one, two, padDb = 0 }: { one: number; two: number; padDb?: number }): Station {
  return drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: 'transceiver-100w',
      one: { made: stage(one, 0) },
      two: { made: stage(two, padDb) },
      antenna: { made: antenna(50) },
    },
    cables: [
      'supply.out > rig.power',
      ['rig.antenna > one.in', { lengthM: 0 }],
      ['one.out > two.in', { lengthM: 0 }],
      ['two.out > antenna.feed', { lengthM: 0 }],
    ],
  });
}

/** One more coax without length. */
function withCoax(station: Station, from: string, to: string): Station {
  const [a, b] = [from, to].map((ref) => ({ unit: ref.split('.')[0] ?? '', port: ref.split('.')[1] ?? '' }));
  const laid = edit(station, layCable(station, a as PortRef, b as PortRef));
  return edit(laid, { type: 'updateCable', id: laid.cables.at(-1)?.id ?? '', set: { lengthM: 0 } });
}

/** With nobody to press the bypass it never closes. */
function withoutBypass(station: ReturnType<typeof amplifier>): ReturnType<typeof amplifier> {
  const copy = structuredClone(station);
  const [kind] = Object.values(copy.kinds).filter((k) => k.actors?.some((a) => a.id === 'bypass'));
  Object.assign(kind?.actors?.[0] ?? {}, { feels: { type: 'voltageAbove', contact: 'in.centre', volts: 50 } });
  return copy;
}
