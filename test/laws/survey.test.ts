import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import type { TriedHookup } from '../../core/rules/rule.ts';
import { edit } from '../../core/station/edit.ts';
import { classOf } from '../../core/station/parts.ts';
import { type Survey, survey } from '../../core/survey.ts';
import { loadsOf, loadVolts } from '../../core/trial/parts.ts';
import { generateStation } from '../stations/generate.ts';
import { anyStation } from '../stations/random-station.ts';
import { trialsOf } from './trials-of.ts';

/** Volts at every load in receive, by hook-up and name. */
function voltsAtLoads(trials: readonly TriedHookup[]): Map<string, number> {
  return new Map(
    trials.flatMap(({ hookup, trial }) =>
      loadsOf(trial.circuit).map(({ part }) => [
        `${hookup.id} ${part.origin.type === 'element' ? `${part.origin.unit}.${part.origin.element}` : ''}`,
        loadVolts(trial.receive, part),
      ]),
    ),
  );
}

describe('the survey, on stations drawn at random', () => {
  it('the order of units and cables in the file changes nothing', () => {
    const shuffled = anyStation.chain((station) =>
      fc
        .tuple(
          fc.shuffledSubarray([...station.units], { minLength: station.units.length }),
          fc.shuffledSubarray([...station.cables], { minLength: station.cables.length }),
        )
        .map(([units, cables]) => ({ station, other: { ...station, units, cables } })),
    );
    fc.assert(
      fc.property(shuffled, ({ station, other }) => {
        const [one, two] = [survey(station), survey(other)];
        const volts = voltsAtLoads(two.hookups);
        for (const [name, before] of voltsAtLoads(one.hookups)) expect(volts.get(name), name).toBeCloseTo(before, 8);
        const found = ({ findings }: Survey) => new Set(findings.map((f) => `${f.severity} ${f.rule}`));
        expect(found(two)).toEqual(found(one));
      }),
      { numRuns: 80 },
    );
  });
  it('what the parts of a way drop together is what the load lacks of its supply’s voltage', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        for (const way of surveyReport(station).budget.ways) {
          const dropped = way.parts.reduce((sum, part) => sum + part.dropVolts, 0);
          expect(dropped, way.port).toBeCloseTo(way.supplyVolts - way.loadVolts, 7);
        }
      }),
      { numRuns: 80 },
    );
  });
  it('every key-down ends, with its moments in the order of time', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        for (const { trial } of trialsOf(station)) {
          for (const keyDown of trial.keyDowns) {
            // Two runs of at most 40 + 20 rounds for each actor; in a round each actor changes once at most.
            const actors = trial.circuit.actors.length;
            expect(keyDown.events.length).toBeLessThanOrEqual(2 * (40 + 20 * actors) * actors);
            expect(Number.isFinite(keyDown.endMs)).toBe(true);
            expect(keyDown.releasedMs).toBeLessThanOrEqual(keyDown.endMs);
            const starts = keyDown.moments.map((m) => m.startMs);
            expect(starts).toEqual([...starts].sort((a, b) => a - b));
          }
        }
      }),
      { numRuns: 120 },
    );
  });
  it('every report can be made, and crosses to another thread as it is', () => {
    fc.assert(
      fc.property(anyStation, (station) => {
        const report = surveyReport(station);
        expect(structuredClone(report)).toEqual(report);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a longer lead', () => {
  it('never raises the voltage of the load that it feeds', () => {
    const stretched = fc.record({
      station: fc.record({ size: fc.integer({ min: 12, max: 30 }), seed: fc.nat({ max: 10_000 }) }),
      which: fc.nat(),
      times: fc.double({ min: 1.1, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(stretched, ({ station: { size, seed }, which, times }) => {
        const station = generateStation(size, seed);
        const leads = station.cables.filter((c) => classOf(station, c) === 'dc');
        const lead = leads[which % leads.length];
        if (!lead) return;
        const longer = edit(station, { type: 'updateCable', id: lead.id, set: { lengthM: lead.lengthM * times } });
        const after = voltsAtLoads(trialsOf(longer));
        for (const [name, volts] of voltsAtLoads(trialsOf(station))) {
          if (name.includes(` ${lead.b.unit}.`)) expect(after.get(name), name).toBeLessThanOrEqual(volts + 1e-9);
        }
      }),
      { numRuns: 80 },
    );
  });
});
