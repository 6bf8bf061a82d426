import { describe, expect, it } from 'vitest';
import type { Trial } from '../../core/keydown/key-down.ts';
import { rfOfDit } from '../../core/keydown/rf-of-dit.ts';
import { tryHookup } from '../../core/keydown/try-hookup.ts';
import { asDrawn } from '../../core/station/parts.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';
import { drawStation } from '../stations/draw.ts';

/** `[ms, actor, on]` of the only key-down. */
function eventsOf(trial: Trial): [number, string, boolean][] {
  return (trial.keyDowns[0]?.events ?? []).map((e) => [e.atMs, trial.circuit.actors[e.actor]?.key ?? '', e.on]);
}

const changeover = {
  units: {
    supply: 'bench-supply',
    strip: 'fused-strip',
    over: 'changeover-by-line',
    key: 'straight-key',
    tx: 'cw-transmitter-3w',
  },
  cables: [
    'supply.out > strip.input',
    'strip.one > over.power',
    'strip.two > tx.power',
    'key.out > over.line',
    'over.key > tx.key',
  ],
};

describe('a press, event by event', () => {
  it('each actor changes its own time after what it feels', () => {
    const trial = tryHookup(drawStation({ ...changeover, plan: { speedWpm: 15 } }), asDrawn);
    // Line at 0; relay +6, key contact +10, RF +3 after it. Let go at a dit, 80 ms: key contact at once, RF −2, relay +4.
    expect(eventsOf(trial)).toEqual([
      [0, 'key.lever', true],
      [0, 'over.coil', true],
      [6, 'over.relay', true],
      [10, 'over.keyOut', true],
      [13, 'tx.rf', true],
      [80, 'key.lever', false],
      [80, 'over.coil', false],
      [80, 'over.keyOut', false],
      [82, 'tx.rf', false],
      [84, 'over.relay', false],
    ]);
    expect(rfOfDit(trial.keyDowns[0] as never, trial.circuit.rf.sources[0] as never, 80)).toEqual({
      lateMs: 13,
      tailMs: 2,
      madeMs: 69,
    });
  });
  it('holds until all has settled where that takes longer than a dit', () => {
    // 60 WPM: a dit is 20 ms, and RF needs 13 ms of it; slowed down by a relay of 40 ms it needs longer.
    const station = drawStation({ ...changeover, plan: { speedWpm: 60 } });
    const [kind] = Object.entries(station.kinds).find(([id]) => id === 'changeover-by-line') ?? [];
    const slow = JSON.parse(JSON.stringify(station));
    for (const actor of slow.kinds[kind ?? ''].actors) if (actor.id === 'keyOut') actor.operateMs = 40;
    expect(tryHookup(slow, asDrawn).keyDowns[0]?.releasedMs).toBe(43);
  });
  it('ends at rest as it began', () => {
    const trial = tryHookup(drawStation(changeover), asDrawn);
    expect(trial.keyDowns[0]?.moments.at(-1)?.reach.on).toEqual(trial.receive.on);
  });
  it('without power nothing goes over: the key does nothing', () => {
    const { units, cables } = changeover;
    const trial = tryHookup(drawStation({ units, cables: cables.filter((c) => !c.startsWith('strip.one')) }), asDrawn);
    expect(eventsOf(trial).map(([, actor]) => actor)).toEqual(['key.lever', 'key.lever']);
  });
});

describe('odd wiring speaks for itself', () => {
  it('a mono plug in a keyer’s paddle jack keys the station at rest', () => {
    const station = drawStation({
      units: { keyer: 'keyer', paddle: 'paddle' },
      cables: [['paddle.out > keyer.paddle', { kind: 'key-lead', plugs: { a: 'stereo-35-plug', b: 'mono-35-plug' } }]],
    });
    const { circuit, receive } = tryHookup(station, asDrawn);
    expect(receive.on[circuit.actorOf.get('keyer.keying') ?? -1]).toBe(1);
  });
  it('a buzzer, a relay that breaks its own coil, is stopped and said not to settle', () => {
    const buzzer: UnitKind = {
      name: 'Buzzer',
      group: 'keying',
      summary: 'for the test',
      ports: [
        { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
      ],
      elements: [
        {
          id: 'coil',
          type: 'load',
          plus: '@coil',
          minus: 'power.shell',
          law: 'resistance',
          amount: 300,
          minV: 9,
          maxV: 15,
          absMaxV: 20,
          reverseProtected: false,
        },
        {
          id: 'own',
          type: 'contactPair',
          from: 'power.centre',
          to: '@coil',
          device: 'relay',
          onOhms: 0.1,
          maxVolts: 30,
          maxAmps: 1,
          when: { off: ['relay'], on: ['knob'] },
        },
      ],
      actors: [
        {
          id: 'knob',
          label: 'Knob',
          feels: { type: 'operator', label: 'Turn on' },
          operateMs: 0,
          releaseMs: 0,
          unpowered: true,
        },
        {
          id: 'relay',
          label: 'Relay',
          feels: { type: 'voltageAbove', contact: '@coil', reference: 'power.shell', volts: 9 },
          operateMs: 5,
          releaseMs: 5,
          unpowered: true,
        },
      ],
      source: 'made up for a test',
    };
    const station = drawStation({
      units: { supply: 'bench-supply', buzzer: { made: buzzer } },
      cables: ['supply.out > buzzer.power'],
    });
    const keyDown = tryHookup(station, asDrawn).keyDowns[0];
    expect(keyDown?.settled).toBe(false);
    expect(keyDown?.events.length).toBeLessThan(500);
  });
});

describe('fuses at rest', () => {
  const swapped = {
    wiring: [
      { a: 'plus', b: 'shell' },
      { a: 'minus', b: 'centre' },
    ],
  };
  it('the one in a shorted branch opens, the others stay, and the rest of the station lives on', () => {
    // The reversed transmitter's case carries plus and meets minus in the receiver's case through a coax braid.
    const station = drawStation({
      units: {
        supply: 'bench-supply',
        strip: { kind: 'fused-strip', overrides: { 'fuse-one.fuseAmps': 1 } },
        tx: 'cw-transmitter-3w',
        over: 'changeover-by-line',
      },
      cables: [
        'supply.out > strip.input',
        ['strip.one > tx.power', swapped],
        'strip.two > over.power',
        'tx.antenna > over.transmitter',
      ],
    });
    const { circuit, atFirst, receive, opened } = tryHookup(station, asDrawn);
    expect(opened.map(({ part }) => circuit.parts[part]?.origin)).toEqual([
      { type: 'element', unit: 'strip', element: 'fuse-one' },
    ]);
    expect(opened[0]?.amps).toBeGreaterThan(1.35);
    const powered = circuit.actorOf.get('over.powered') ?? -1;
    expect([atFirst.on[powered], receive.on[powered]]).toEqual([0, 1]);
  });
});
