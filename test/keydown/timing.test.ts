import { describe, expect, it } from 'vitest';
import type { Trial } from '../../core/keydown/key-down.ts';
import { tryHookup } from '../../core/keydown/try-hookup.ts';
import { asDrawn } from '../../core/station/parts.ts';
import type { Actor, UnitElement } from '../../core/station/schema/unit-kind.ts';
import { survey } from '../../core/survey.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

const bias: UnitElement = { id: 'bias', type: 'pullUp', contact: 'line.tip', volts: 5, ohms: 1000 };
const line = { type: 'voltageBelow', contact: 'line.tip', volts: 1 } as const;
const step = (id: string, operateMs: number, set: Partial<Actor> = {}): Actor => ({
  id,
  label: id,
  feels: line,
  operateMs,
  releaseMs: 0,
  ...set,
});

/** When an actor goes on and off, in milliseconds from the press. */
function times(trial: Trial, key: string): number[] {
  const index = trial.circuit.actorOf.get(key);
  return (trial.keyDowns[0]?.events ?? []).filter((e) => e.actor === index).map((e) => e.atMs);
}

describe('a sequencer', () => {
  // Steps of 20 ms, the relay takes 15: worked from the sequence mute, antenna relay, amplifier, RF that transverter and
  // amplifier papers give. RF is enabled at 40 ms, 25 ms after the contacts have settled.
  const sequencer = made({ line: ['control', 'mono-35-jack'] }, [bias], {
    actors: [
      step('relay', 15),
      step('amplifier', 20, { feels: line }),
      step('rf', 20, { feels: { type: 'actor', actor: 'amplifier' } }),
    ],
  });
  const station = drawStation({
    units: { key: 'straight-key', sequencer: { made: sequencer } },
    cables: ['key.out > sequencer.line'],
  });
  it('enables RF two steps after the line, long after the relay', () => {
    const trial = tryHookup(station, asDrawn);
    const [relay = 0] = times(trial, 'sequencer.relay');
    const [rf = 0] = times(trial, 'sequencer.rf');
    expect(rf).toBe(40);
    expect(rf - relay).toBe(25);
  });
});

describe('a transmitter’s delay against an amplifier’s relay', () => {
  const station = (rfMs: number, relayMs: number) => {
    const path = (id: string, set: object): UnitElement => ({
      id,
      type: 'rfPath',
      a: 'in',
      b: 'out',
      lossDb: 0.2,
      isolationDb: 40,
      ...set,
    });
    const amplifier = made(
      { line: ['control', 'mono-35-jack'], in: ['rf', 'bnc-jack'], out: ['rf', 'bnc-jack'] },
      [bias, path('through', { when: { off: ['relay'] } }), path('over', { when: { on: ['relay'] } })],
      { actors: [step('relay', relayMs, { releaseMs: 10, does: 'changesOver' })] },
    );
    const output: UnitElement = { id: 'output', type: 'rfSource', port: 'antenna', dbm: 37, when: { on: ['rf'] } };
    const tx = made({ line: ['control', 'mono-35-jack'], antenna: ['rf', 'bnc-jack'] }, [bias, output], {
      actors: [step('rf', rfMs, { does: 'sends' })],
    });
    return drawStation({
      units: { key: 'straight-key', tx: { made: tx }, amplifier: { made: amplifier }, load: 'dummy-load-5w' },
      cables: [
        'key.out > tx.line',
        'key.out > amplifier.line',
        'tx.antenna > amplifier.in',
        'amplifier.out > load.input',
      ],
    });
  };
  it.each([
    // Transceiver papers: delays of 10 and 25 ms; amplifier relays of 15 and 20 ms.
    { rfMs: 25, relayMs: 20, hot: false },
    { rfMs: 10, relayMs: 15, hot: true },
  ])('RF after $rfMs ms, relay after $relayMs ms: hot-switched is $hot', ({ rfMs, relayMs, hot }) => {
    const found = survey(station(rfMs, relayMs)).findings.filter((f) => f.rule === 'keying/hot-switched');
    expect(found.map((f) => f.values.time)).toEqual(hot ? [relayMs - rfMs] : []);
  });
});

describe('a changeover that senses RF', () => {
  const station = (hang: string) =>
    drawStation({
      units: {
        supply: 'bench-supply',
        over: { kind: 'changeover-sensing-rf', settings: { hang } },
        tx: 'cw-transmitter-3w',
        key: 'straight-key',
        wire: 'wire-antenna',
      },
      cables: [
        'supply.out > over.power',
        'supply.out > tx.power',
        'key.out > tx.key',
        'tx.antenna > over.transmitter',
        'over.antenna > wire.feed',
      ],
      plan: { speedWpm: 20 },
    });
  // RF 3 ms after the key and 2 ms after its release; the relay takes 6 ms and 4 ms. At 20 WPM a dit lasts 60 ms and a
  // word space 420 ms (ITU-R M.1677-1).
  it.each([
    ['dit', 60],
    ['word', 420],
  ])('stays over for a %s: %d ms', (setting, hangMs) => {
    expect(times(tryHookup(station(setting), asDrawn), 'over.relay')).toEqual([3 + 6, 60 + 2 + hangMs + 4]);
  });
});

describe('a unit that loses its power while the key is down', () => {
  it('lets go of what it held, in its own time', () => {
    const ports = { power: ['dc', 'binding-posts'], out: ['dc', 'binding-posts'], line: ['control', 'mono-35-jack'] };
    const pair = { type: 'contactPair', device: 'relay', onOhms: 0.01, maxVolts: 30, maxAmps: 5 } as const;
    const breaker = made(
      ports as never,
      [
        bias,
        { ...pair, id: 'plus', from: 'power.plus', to: 'out.plus', when: { off: ['cut'] } },
        { id: 'minus', type: 'conductor', from: 'power.minus', to: 'out.minus', ohms: 0.001 },
      ],
      { actors: [step('cut', 5, { unpowered: true })] },
    );
    const fed = made(
      { power: ['dc', 'binding-posts'] },
      [
        {
          id: 'draw',
          type: 'load',
          plus: 'power.plus',
          minus: 'power.minus',
          law: 'current',
          amount: 0.1,
          minV: 11,
          maxV: 15,
          absMaxV: 16,
          reverseProtected: false,
        },
      ],
      {
        actors: [
          step('relay', 2, {
            feels: { type: 'voltageAbove', contact: 'power.plus', reference: 'power.minus', volts: 0.1 },
            releaseMs: 7,
          }),
        ],
      },
    );
    const station = drawStation({
      units: { supply: 'bench-supply', key: 'straight-key', breaker: { made: breaker }, fed: { made: fed } },
      cables: ['supply.out > breaker.power', 'breaker.out > fed.power', 'key.out > breaker.line'],
      plan: { speedWpm: 15 },
    });
    const trial = tryHookup(station, asDrawn);
    // Cut at 5 ms, power gone at once, the relay 7 ms later; back a dit (80 ms) after the press, and 2 ms for the relay.
    expect(times(trial, 'fed.powered')).toEqual([5, 80]);
    expect(times(trial, 'fed.relay')).toEqual([12, 82]);
  });
});
