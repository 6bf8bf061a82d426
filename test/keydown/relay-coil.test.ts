import { describe, expect, it } from 'vitest';
import { survey } from '../../core/survey.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

/** A changeover whose relay coil hangs between its plus and the line that a key pulls to ground. */
const relay = made(
  { power: ['dc', 'two-pole-30', { needed: 'always' }], line: ['control', 'phono-jack'] },
  [
    {
      id: 'coil',
      type: 'load',
      plus: 'power.plus',
      minus: 'line.centre',
      law: 'resistance',
      amount: 160,
      minV: 9,
      maxV: 16,
      absMaxV: 20,
      reverseProtected: true,
    },
    { id: 'ground', type: 'conductor', from: 'power.minus', to: 'chassis', ohms: 0.005 },
  ],
  {
    actors: [
      {
        id: 'armature',
        label: 'Relay',
        feels: { type: 'currentAbove', element: 'coil', amps: 0.05 },
        operateMs: 12,
        releaseMs: 5,
        unpowered: true,
        does: 'changesOver',
      },
    ],
  },
);

describe('a relay coil on a keyed line', () => {
  const station = drawStation({
    units: { supply: 'bench-supply', relay: { made: relay }, key: 'straight-key' },
    cables: ['supply.out > relay.power', 'key.out > relay.line'],
  });
  const { hookups, findings } = survey(station);
  const trial = hookups[0]?.trial;
  const coil = trial?.circuit.parts.findIndex((p) => p.kind === 'load') ?? -1;
  const sending = trial?.keyDowns[0]?.moments.find((m) => m.name === 'sending')?.reach;

  it('draws nothing until the key is down, then what its resistance lets through', () => {
    expect(trial?.receive.dc.ampsIn(coil)).toBeCloseTo(0, 6);
    // 13.8 V over 160 Ω and some tenths of an ohm of supply, leads, screen and key: 86 mA.
    expect(sending?.dc.ampsIn(coil)).toBeCloseTo(13.8 / 160.3, 4);
  });
  it('moves its contacts its own time after the current', () => {
    expect(trial?.keyDowns[0]?.events.map((e) => [e.atMs, trial.circuit.actors[e.actor]?.key, e.on])).toEqual([
      [0, 'key.lever', true],
      [0, 'relay.powered', true],
      [12, 'relay.armature', true],
      [80, 'key.lever', false],
      [80, 'relay.powered', false],
      [85, 'relay.armature', false],
    ]);
  });
  it('is no mistake', () => expect(findings.filter((f) => f.severity !== 'note')).toEqual([]));
});
