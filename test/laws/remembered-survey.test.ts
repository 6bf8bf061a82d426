import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edit } from '../../core/station/edit.ts';
import { type History, recordChange, redo, replaceStation, startHistory, undo } from '../../core/station/history.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { type Survey, survey } from '../../core/survey.ts';
import { bytesHeld, canSweep } from '../bytes-held.ts';
import { correct, troubles } from '../cases/index.ts';
import { type Random, randomFrom } from '../fuzz/random.ts';
import { needs } from '../needs.ts';
import { generateStation } from '../stations/generate.ts';
import { randomChange } from '../stations/random-change.ts';
import { anyStation } from '../stations/random-station.ts';
import { sample, sampleNames } from '../stations/samples.ts';
import { findingsDifference, surveyDifference } from './survey-difference.ts';

/** Each edit of a chain is drawn by a seed of its own, so that a failure shrinks to the edits that it needs. */
const anySeed = fc.noShrink(fc.nat());
const seeds = (length: number) => fc.array(anySeed, { minLength: 1, maxLength: length, size: 'max' });

/** What an edit brings along of kinds and connectors is long, and of the catalogue. */
const withoutCarried = (key: string, value: unknown) => (key === 'carried' ? undefined : value);

interface Step {
  readonly history: History;
  readonly words: string;
}

const hasOpened = ({ hookups }: Survey): boolean => hookups.some(({ trial }) => trial.opened.length > 0);

/** An edit, an undo or a redo; now and then the whole document as it would be read from a file again. */
function step(history: History, before: Survey, random: Random): Step {
  // Where fuses have opened nothing is taken over, and there would be little to be seen.
  if (random.chance(hasOpened(before) ? 0.7 : 0.12) && history.past.length > 0)
    return { history: undo(history), words: 'undo' };
  if (random.chance(0.1) && history.future.length > 0) return { history: redo(history), words: 'redo' };
  if (random.chance(0.01))
    return { history: replaceStation(history, structuredClone(history.station), 'Read again'), words: 'read again' };
  const drawn = randomChange({ station: history.station, findings: before.findings }, random);
  if (!drawn) return { history, words: 'nothing' };
  const words = `${drawn.name}: ${JSON.stringify(drawn.change, withoutCarried).slice(0, 600)}`;
  return { history: recordChange(history, drawn.change), words };
}

/** Makes the edits one after another, each survey the one before of the next, and says where it differs from one from scratch. */
function firstTrouble(
  station: Station,
  edits: readonly number[],
  differenceOf: typeof surveyDifference,
): string | null {
  let history = startHistory(station);
  let before = survey(station);
  const done: string[] = [];
  for (const seed of edits) {
    const made = step(history, before, randomFrom(seed));
    history = made.history;
    done.push(made.words);
    const after = survey(history.station, before);
    const found = differenceOf(after, survey(history.station));
    if (found) {
      const listed = done.slice(-6).map((words, i, all) => `${done.length - all.length + i + 1}. ${words}`);
      return [`${station.title}, ${station.units.length} units`, ...listed, found].join('\n');
    }
    before = after;
  }
  return null;
}

function expectSame({ station }: { readonly station: Station }, edits: readonly number[]) {
  const trouble = firstTrouble(station, edits, surveyDifference);
  if (trouble !== null) throw new Error(trouble);
}

/** Stations by their title in the words of a failure, which are long enough. */
const named = (stations: fc.Arbitrary<Station>) =>
  stations.map((station) => ({ station, [fc.toStringMethod]: () => station.title }));

const cases = [...troubles.flatMap(({ wrong, right }) => [wrong, right]), ...correct.map(({ station }) => station)];

describe('a survey that takes over what an edit did not touch is the same as one from scratch', () => {
  it('for any station and any few edits', () => {
    fc.assert(fc.property(named(anyStation), seeds(6), expectSame), { numRuns: 30 });
  });
  it('for the stations of real mistakes', () => {
    fc.assert(fc.property(named(fc.constantFrom(...cases)), seeds(12), expectSame), { numRuns: 40 });
  });
  it('for the samples', () => {
    const small = sampleNames.filter((name) => sample(name).units.length < 30);
    fc.assert(
      fc.property(fc.constantFrom(...small), seeds(12), (name, edits) => {
        expectSame({ station: sample(name) }, edits);
      }),
      { numRuns: 15 },
    );
  });
  it('through two hundred edits in a row', () => {
    const two = fc.array(anySeed, { minLength: 200, maxLength: 200 });
    fc.assert(
      fc.property(two, (edits) => {
        expect(firstTrouble(generateStation(20), edits, findingsDifference)).toBeNull();
      }),
      { numRuns: 1 },
    );
  });
});

describe('the survey before an edit', () => {
  it('is as good for several edits, one beside another, and for the same one again', () => {
    fc.assert(
      fc.property(named(fc.constantFrom(...cases)), seeds(4), ({ station }, edits) => {
        const before = survey(station);
        const again = survey(station, before);
        expect(surveyDifference(again, before)).toBeNull();
        for (const seed of edits) {
          const drawn = step(startHistory(station), before, randomFrom(seed));
          const { station: next } = drawn.history;
          const scratch = survey(next);
          for (let times = 0; times < 2; times++)
            expect(surveyDifference(survey(next, before), scratch), `${station.title}\n${drawn.words}`).toBeNull();
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('what a survey holds', () => {
  it('is no more than twice as much after two hundred edits', needs('a heap that can be swept', canSweep), () => {
    let station = generateStation(12);
    const afterEdits = bytesHeld(() => {
      let last = survey(station);
      for (let seed = 0; seed < 200; seed++) {
        const drawn = randomChange({ station, findings: last.findings }, randomFrom(seed));
        const next = drawn ? edit(station, drawn.change) : station;
        const surveyed = survey(next, last);
        // Where fuses open nothing is taken over, and what was held before is given up.
        if (hasOpened(surveyed)) continue;
        last = surveyed;
        station = next;
      }
      return last;
    });
    // A copy: what is worked out for a document is held by it.
    const fromScratch = bytesHeld(() => survey(structuredClone(station)));
    expect(afterEdits).toBeLessThanOrEqual(2 * fromScratch);
  });
});
