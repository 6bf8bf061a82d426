import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Station } from '../../core/station/schema/schema.ts';
import type { UnitElement } from '../../core/station/schema/unit-kind.ts';
import { survey } from '../../core/survey.ts';
import { lead, radio, supply, swapped } from '../cases/parts.ts';
import { beside, listener, shack } from '../cases/rf-stations.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

// Each rule on stations with figures drawn at random, against the sum that a person would do on paper. Figures within
// the reach of joints and rounding of the limit are left out.

const speaks = (station: Station, ...rules: string[]): boolean =>
  survey(station).findings.some((f) => rules.includes(f.rule));
const runs = { numRuns: 120 };

/** NEC 240.4(D), amperes; NBS Handbook 100, ohms per metre at 20 °C. */
const gauges = [
  { awg: 18, limit: 7, ohms: 6.385 / 304.8 },
  { awg: 16, limit: 10, ohms: 4.016 / 304.8 },
  { awg: 14, limit: 15, ohms: 2.525 / 304.8 },
  { awg: 12, limit: 20, ohms: 1.588 / 304.8 },
  { awg: 10, limit: 30, ohms: 0.9989 / 304.8 },
];
const gauge = fc.constantFrom(...gauges);

const fed = (volts: number, amps: number, route: object, figures: object = {}) =>
  drawStation({
    units: { supply: supply(volts, 60), radio: radio({ receive: amps, send: amps, minV: 5, absMaxV: 30, ...figures }) },
    cables: [['supply.out > radio.power', route]],
    plan: { duty: 1 },
  });

describe('a rule speaks where the figures say so, and only there', () => {
  it('fuse-over-wire: the fuse against the table', () => {
    const ratings = fc.constantFrom(3, 5, 7.5, 10, 15, 20, 25, 30, 40);
    fc.assert(
      fc.property(gauge, ratings, ({ awg, limit }, rating) => {
        expect(speaks(fed(13.8, 1, lead(awg, 1, rating)), 'power/fuse-over-wire')).toBe(rating > limit);
      }),
      runs,
    );
  });
  it('wire-overloaded: the current against the table', () => {
    fc.assert(
      fc.property(gauge, fc.double({ min: 1, max: 40, noNaN: true }), ({ awg, limit }, amps) => {
        fc.pre(Math.abs(amps - limit) > 0.01 * limit);
        const station = fed(24, amps, lead(awg, 0.2, 50));
        // A fuse that opens takes the current away.
        expect(speaks(station, 'power/wire-overloaded')).toBe(amps > limit);
      }),
      runs,
    );
  });
  it('under-voltage: volts less amperes times ohms, both ways', () => {
    const figures = fc.record({
      wire: gauge,
      metres: fc.double({ min: 0.2, max: 12, noNaN: true }),
      amps: fc.double({ min: 0.5, max: 20, noNaN: true }),
      minV: fc.double({ min: 9, max: 13.5, noNaN: true }),
    });
    fc.assert(
      fc.property(figures, ({ wire, metres, amps, minV }) => {
        // 10 mΩ in the supply; studs and rings are tenths of a milliohm.
        const volts = 13.8 - amps * (0.01 + 2 * metres * wire.ohms);
        fc.pre(Math.abs(volts - minV) > 0.01 + 0.003 * amps && volts > 6);
        const found = survey(fed(13.8, amps, lead(wire.awg, metres), { minV })).findings.filter(
          (f) => f.rule === 'power/under-voltage' && f.severity === 'fault',
        );
        expect(found.length > 0).toBe(volts < minV);
        if (found[0]) expect(Number(found[0].values.volts)).toBeCloseTo(volts, 1);
      }),
      runs,
    );
  });
  it('over-voltage: the supply against what the unit stands', () => {
    const volts = fc.double({ min: 3, max: 40, noNaN: true });
    fc.assert(
      fc.property(volts, volts, (given, stands) => {
        fc.pre(Math.abs(given - stands) > 0.05);
        const unit = made({ power: ['dc', 'stud-pair'] }, [
          { ...load('power.plus', 'power.minus', 0.01), minV: 1, maxV: stands, absMaxV: stands },
        ]);
        const station = drawStation({
          units: { supply: supply(given, 5), unit: { made: unit } },
          cables: [['supply.out > unit.power', lead(18, 0.5, 2)]],
        });
        expect(speaks(station, 'power/over-voltage')).toBe(given > stands);
      }),
      runs,
    );
  });
  it('reversed-polarity: whatever the connectors, and which end is crossed', () => {
    const jacks = fc.constantFrom(
      'stud-pair',
      'two-pole-30',
      'two-pole-15',
      'binding-posts',
      'barrel-21-jack',
      'barrel-25-jack',
      'bullet-60-jack',
    );
    fc.assert(
      fc.property(jacks, jacks, fc.boolean(), fc.boolean(), fc.boolean(), (from, to, crossed, turned, guarded) => {
        const contacts = (jack: string) => (jack.startsWith('barrel') ? ['centre', 'shell'] : ['plus', 'minus']);
        const [plus, minus] = contacts(to);
        const [outPlus, outMinus] = contacts(from);
        const output: UnitElement = {
          id: 'output',
          type: 'supply',
          plus: `out.${outPlus}`,
          minus: `out.${outMinus}`,
          volts: 13.8,
          sourceOhms: 0.02,
          amps: 3,
          peakAmps: 4,
          beyond: 'limits',
        };
        const unit = made({ power: ['dc', to] }, [
          { ...load(`power.${plus}`, `power.${minus}`, 0.2), reverseProtected: guarded },
        ]);
        const rows = [
          [outPlus, crossed ? minus : plus],
          [outMinus, crossed ? plus : minus],
        ] as const;
        const station = drawStation({
          units: { supply: { made: made({ out: ['dc', from] }, [output], { isolated: 'all' }) }, unit: { made: unit } },
          cables: [
            [
              turned ? 'unit.power > supply.out' : 'supply.out > unit.power',
              { wiring: rows.map(([a, b]) => (turned ? { a: b ?? '', b: a ?? '' } : { a: a ?? '', b: b ?? '' })) },
            ],
          ],
        });
        const found = survey(station).findings.filter((f) => f.rule === 'power/reversed-polarity');
        expect(found.map((f) => f.severity)).toEqual(crossed ? [guarded ? 'fault' : 'danger'] : []);
      }),
      runs,
    );
  });
  it('no-fuse: metres of wire before the fuse at a source that can burn it', () => {
    const atM = fc.double({ min: 0.02, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(gauge, atM, fc.integer({ min: 2, max: 200 }), ({ awg, limit }, metres, amps) => {
        fc.pre(Math.abs(metres - 0.18) > 0.01 && Math.abs(amps * 1.2 - limit) > 1);
        const station = drawStation({
          units: { supply: supply(13.8, amps), radio: radio({ receive: 0.1, send: 0.2, minV: 5 }) },
          cables: [['supply.out > radio.power', lead(awg, 2, 5, metres)]],
        });
        // 33 CFR 183.455(b): 7 in, 0.18 m.
        expect(speaks(station, 'power/no-fuse')).toBe(amps * 1.2 > limit && metres > 0.18);
      }),
      runs,
    );
  });
  it('transmit-into-receiver: decibels subtracted from the transmitter’s level', () => {
    const dbm = fc.double({ min: 20, max: 62, noNaN: true });
    fc.assert(
      fc.property(
        dbm,
        fc.double({ min: 5, max: 120, noNaN: true }),
        fc.double({ min: -20, max: 30, noNaN: true }),
        (sent, loss, damage) => {
          fc.pre(Math.abs(sent - loss - damage) > 0.3);
          const found = survey(beside(sent, listener(damage, damage), loss)).findings;
          const danger = found.some((f) => f.rule === 'rf/transmit-into-receiver' && f.severity === 'danger');
          expect(danger).toBe(sent - loss > damage);
        },
      ),
      runs,
    );
  });
  it('line-over-rating: the open line against the contact', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200, max: 200 }), (volts) => {
        fc.pre(Math.abs(Math.abs(volts) - 30) > 1 && Math.abs(volts) > 3);
        const amplifier = made({ key: ['control', 'phono-jack'] }, [
          { id: 'line', type: 'pullUp', contact: 'key.centre', volts, ohms: 10_000 },
        ]);
        const station = shack({ amplifier: { made: amplifier }, load: 'dummy-load-100w' }, [
          'rig.antenna > load.input',
          'rig.amplifier > amplifier.key',
        ]);
        // The transceiver's relay contact stands 30 V.
        expect(speaks(station, 'keying/line-over-rating')).toBe(Math.abs(volts) > 30);
      }),
      runs,
    );
  });
  it('reversed-polarity: in the hook-up in which it is so', () => {
    fc.assert(
      fc.property(fc.constantFrom('one', 'two'), fc.boolean(), (hookup, isCrossed) => {
        const station = drawStation({
          units: {
            supply: supply(13.8, 3),
            a: radio({ receive: 0.1, send: 0.2 }),
            b: radio({ receive: 0.1, send: 0.2 }),
          },
          hookups: [
            { id: 'one', name: 'One' },
            { id: 'two', name: 'Two' },
          ],
          cables: [
            ['supply.out > a.power', { ...lead(18, 1, 1), hookups: ['one'] }],
            ['supply.out > b.power', { ...lead(18, 1, 1), hookups: ['two'] }],
          ],
        });
        const unit = hookup === 'one' ? 'a' : 'b';
        const cables = station.cables.map((c) => (c.b.unit === unit && isCrossed ? { ...c, ...swapped } : c));
        const found = survey({ ...station, cables }).findings.filter((f) => f.rule === 'power/reversed-polarity');
        expect(found.map((f) => f.hookups)).toEqual(isCrossed ? [[hookup]] : []);
      }),
      { numRuns: 20 },
    );
  });
});
