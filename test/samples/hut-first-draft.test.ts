import { describe, expect, it } from 'vitest';
import type { Finding } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import type { Place } from '../../core/station/place.ts';
import { survey } from '../../core/survey.ts';
import { sample } from '../stations/samples.ts';

const { findings } = survey(sample('hut-first-draft'));

interface Planted {
  mistake: string;
  rule: string;
  at: Place[];
  /** Figures worked out by hand, with the step beside them. */
  values: Record<string, number | string>;
}

const planted: Planted[] = [
  {
    mistake: 'the strip’s receiver lead is centre plus',
    rule: 'power/reversed-polarity',
    at: [{ unit: 'receiver', port: 'power' }, { cable: 'd4' }],
    values: { volts: -13.8 }, // pulled out, nothing flows in it: the supply's 13.8 V, the wrong way round
  },
  {
    mistake: 'the receiver’s and the transmitter’s cables are swapped at the changeover',
    rule: 'rf/changeover-reversed',
    at: [{ unit: 'changeover' }, { cable: 'r1' }, { cable: 'r3' }],
    values: { transmitter: 'Transmitter', receiver: 'Receiver', cables: 'R1 and R3' },
  },
  {
    mistake: 'a 10 A fuse guards a 24 AWG lead',
    rule: 'power/fuse-over-wire',
    at: [{ unit: 'strip', port: 'two' }, { cable: 'd3' }],
    values: { rated: 10, limit: 2.5, wire: 'AWG 24' }, // AC 43.13-1B table 11-9: 2.5 A for 24 AWG in a bundle
  },
  {
    mistake: 'a mono extension lead carries the stereo phones',
    rule: 'audio/mono-in-stereo',
    at: [
      { unit: 'receiver', port: 'phones' },
      { cable: 'a1', end: 'a' },
    ],
    values: { cable: 'A1' },
  },
  {
    mistake: 'no mute cable',
    rule: 'keying/no-mute',
    at: [{ unit: 'receiver', port: 'mute' }],
    // 34.8 dBm, less 35 dB of isolation, 0.2 dB through the relay, and twice 0.6 m of RG-58 at about 5 dB per 100 m.
    values: { level: 34.8 - 35 - 0.2 - 2 * 0.006 * 5 },
  },
  {
    mistake: 'no hook-up with the dummy load',
    rule: 'drawing/no-dummy-load-hookup',
    at: [{ unit: 'transmitter' }],
    values: { transmitter: 'Transmitter' },
  },
  {
    mistake: 'a phono lead meets a BNC without an adapter',
    rule: 'drawing/adapter-needed',
    at: [
      { cable: 'r3', end: 'a' },
      { unit: 'changeover', port: 'transmitter' },
    ],
    values: { cable: 'R3' },
  },
];

describe('the hut’s first draft', () => {
  it.each(planted)('reports that $mistake', ({ rule, at, values }) => {
    const finding = findings.find((f) => f.rule === rule) as Finding;
    expect(finding, rule).toBeDefined();
    expect(finding.causedBy).toBeUndefined();
    expect(finding.at).toEqual(at);
    for (const [name, wanted] of Object.entries(values)) {
      if (typeof wanted === 'string') expect(finding.values[name]).toBe(wanted);
      else expect(Number(finding.values[name]), name).toBeCloseTo(wanted, 1);
    }
  });
  it('folds every other danger and fault under one of them', () => {
    const roots = new Set(planted.map((p) => p.rule));
    const others = findings.filter((f) => (f.severity === 'danger' || f.severity === 'fault') && !roots.has(f.rule));
    expect(others.length).toBeGreaterThan(0);
    for (const finding of others) {
      const cause = findings.find((f) => f.id === finding.causedBy);
      expect(cause && roots.has(cause.rule), finding.message).toBe(true);
    }
  });
});

describe('putting the first draft right by its own fixes', () => {
  it('leaves nothing above a note', () => {
    let station = sample('hut-first-draft');
    const done: string[] = [];
    for (let round = 0; round < 12; round++) {
      const fix = survey(station).findings.find((f) => f.fix && f.severity !== 'note' && f.causedBy === undefined)?.fix;
      if (!fix) break;
      done.push(fix.name);
      station = edit(station, fix.change);
    }
    expect(
      survey(station)
        .findings.filter((f) => f.severity !== 'note')
        .map((f) => f.id),
    ).toEqual([]);
    expect(done).toHaveLength(6);
  });
});
