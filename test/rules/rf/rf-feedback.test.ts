import { rfFeedback } from '../../../core/rules/rf/rf-feedback.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

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
  ],
});

/** With nobody to press the bypass it never closes. */
function withoutBypass(station: ReturnType<typeof amplifier>): ReturnType<typeof amplifier> {
  const copy = structuredClone(station);
  const [kind] = Object.values(copy.kinds).filter((k) => k.actors?.some((a) => a.id === 'bypass'));
  Object.assign(kind?.actors?.[0] ?? {}, { feels: { type: 'voltageAbove', contact: 'in.centre', volts: 50 } });
  return copy;
}
