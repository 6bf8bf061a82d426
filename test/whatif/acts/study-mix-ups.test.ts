import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/rules/finding.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { studyMixUps } from '../../../core/whatif/acts/study-mix-ups.ts';
import { drawAtRandom } from '../../acts/draw-at-random.ts';
import { sample } from '../../stations/samples.ts';

const said = ({ id, severity, message }: Finding) => `${severity} ${id} ${message}`;

/** What every so manyth act brings above a note, each survey from scratch. */
function byBruteForce(station: Station, every: number): Map<string, string[]> {
  const known = new Set(survey(station).findings.map((f) => f.id));
  const harms = listActs(station)
    .filter((_, i) => i % every === 0)
    .map(({ id, change }): [string, Finding[]] => [
      id,
      survey(edit(station, change)).findings.filter((f) => !known.has(f.id)),
    ]);
  return new Map(
    harms.map(([id, come]) => [id, come.some((f) => f.severity !== 'note') ? come.map(said) : []] as const),
  );
}

function expectSame(station: Station, every = 1) {
  const { tried, harmless, mixUps } = studyMixUps(station);
  const harmful = new Set(mixUps.flatMap(({ act, alike }) => [act, ...alike].map(({ id }) => id)));
  expect(tried).toBe(harmless + harmful.size);
  const told = new Map(mixUps.map(({ act, harms }) => [act.id, harms.map(said)]));
  for (const [id, harms] of byBruteForce(station, every)) {
    expect([id, harmful.has(id)]).toEqual([id, harms.length > 0]);
    if (told.has(id)) expect([id, told.get(id)]).toEqual([id, harms]);
  }
}

describe('the study of mix-ups says what a survey from scratch of each says', () => {
  it.each([
    ['hut', 1],
    ['hill-table', 1],
    ['old-and-new', 7],
    ['two-metre-mast', 15],
  ])('on %s', (name, every) => expectSame(sample(name), every));
  it('on fifty stations drawn at random', () => {
    for (const station of drawAtRandom(50, 7)) expectSame(station, 11);
  });
});

describe('the mix-ups of the hut', () => {
  const study = studyMixUps(sample('hut'));

  it('have the dangers on top, among them what happens easily first', () => {
    const { mixUps } = study;
    const ranks = mixUps.map(({ severity, ease }) => [['danger', 'fault', 'doubt'].indexOf(severity), -ease.score]);
    expect(ranks).toEqual([...ranks].sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d));
    expect(mixUps[0]?.severity).toBe('danger');
  });

  it('say when they strike and why they happen', () => {
    const found = study.mixUps.find(({ act }) => act.words === 'R2 and R3 exchanged at Changeover');
    expect(found).toMatchObject({
      severity: 'danger',
      strikes: 'at the first press',
      ease: { words: ['two alike jacks on one panel', 'the two leads look the same'] },
    });
  });

  it('tell how far they are', () => {
    const told: number[][] = [];
    const { tried } = studyMixUps(sample('hut'), (...progress) => told.push(progress));
    expect(told).toEqual(Array.from({ length: tried }, (_, i) => [i + 1, tried]));
  });
});
