import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveCableEnd } from '../../core/catalog/laying/move-cable-end.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { type History, recordChange, redo, replaceStation, startHistory, undo } from '../../core/station/history.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { type Survey, survey } from '../../core/survey.ts';
import { bytesHeld, canSweep } from '../bytes-held.ts';
import { correct, troubles } from '../cases/index.ts';
import { type Random, randomFrom } from '../fuzz/random.ts';
import { needs } from '../needs.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
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
    fc.assert(fc.property(named(anyStation), seeds(6), expectSame), { numRuns: 20 });
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

const swapped = [
  { a: 'tip', b: 'sleeve' },
  { a: 'sleeve', b: 'tip' },
];

const line = drawStation({
  units: {
    supply: 'bench-supply',
    strip: 'fused-strip',
    over: 'changeover-by-line',
    meter: 'swr-meter',
    tuner: 'manual-tuner',
  },
  cables: [
    'supply.out > strip.input',
    'strip.two > over.power',
    'over.antenna > meter.transmitter',
    'meter.antenna > tuner.transmitter',
  ],
});

const intoLine = edit(line, moveCableEnd(line, 'r1', 'a', { unit: 'over', port: 'line' }) as Change);

const pair = drawStation({
  units: {
    supply: 'bench-supply',
    strip: 'fused-strip',
    rx: 'receiver-with-mute',
    over: 'changeover-by-line',
    keyer: 'keyer',
    paddle: 'paddle',
    supply2: 'bench-supply',
    strip2: 'fused-strip',
    tx: 'cw-transmitter-3w',
    over2: 'changeover-by-line',
  },
  cables: [
    'supply.out > strip.input',
    'strip.two > over.power',
    'over.receiver > rx.antenna',
    'paddle.out > keyer.paddle',
    'keyer.out > over.line',
    'supply2.out > strip2.input',
    'strip2.one > tx.power',
    'tx.antenna > over2.transmitter',
    'over2.antenna > rx.antenna',
    'over2.key > tx.key',
  ],
});

const program = made(
  { ptt: ['control', 'mono-35-jack'] },
  [
    { id: 'high', type: 'pullUp', contact: 'ptt.tip', volts: 5, ohms: 1000 },
    {
      id: 'switch',
      when: { on: ['program'] },
      type: 'contactPair',
      from: 'ptt.tip',
      to: 'ptt.sleeve',
      device: 'transistor',
      onOhms: 1,
      maxVolts: 30,
      maxAmps: 0.1,
    },
  ],
  {
    actors: [
      {
        id: 'program',
        label: 'Program',
        feels: { type: 'operator', label: 'Send' },
        operateMs: 0,
        releaseMs: 0,
        unpowered: true,
        does: 'keys',
      },
    ],
  },
);

const rig = made(
  { ptt: ['control', 'mono-35-jack'], antenna: ['rf', 'uhf-jack'] },
  [{ id: 'output', when: { on: ['rf'] }, type: 'rfSource', port: 'antenna', dbm: 44 }],
  {
    actors: [
      {
        id: 'rf',
        label: 'rf',
        feels: { type: 'voltageBelow', contact: 'ptt.tip', volts: 1 },
        operateMs: 10,
        releaseMs: 5,
        does: 'sends',
      },
    ],
  },
);

/** What chains of edits came upon, as small as it could be made. */
const chosen: readonly { name: string; station: Station; change: Change | null }[] = [
  {
    name: 'a lead without a current, on the way of a voltage, goes elsewhere',
    station: intoLine,
    change: moveCableEnd(intoLine, 'r1', 'a', { unit: 'over', port: 'antenna' }),
  },
  {
    name: 'a press moves a way into which another one now sends in receive',
    station: pair,
    change: { type: 'updateCable', id: 'k3', set: { wiring: swapped } },
  },
  {
    name: 'a press no longer reaches what it switched',
    station: drawStation({ units: { port: { made: program }, rig: { made: rig } }, cables: ['port.ptt > rig.ptt'] }),
    change: { type: 'removeCables', ids: ['k1'] },
  },
];

describe('so it is where', () => {
  it.each(chosen)('$name', ({ station, change }) => {
    if (!change) throw new Error('there is nothing to edit');
    const next = edit(station, change);
    expect(next.cables).not.toEqual(station.cables);
    expect(surveyDifference(survey(next, survey(station)), survey(next))).toBeNull();
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
