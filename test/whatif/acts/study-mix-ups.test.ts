import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, severities } from '../../../core/rules/finding.ts';
import { edit } from '../../../core/station/edit.ts';
import { findUnit } from '../../../core/station/parts.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { studyMixUps } from '../../../core/whatif/acts/study-mix-ups.ts';
import { drawStation } from '../../stations/draw.ts';
import { anyStation } from '../../stations/random-station.ts';
import { sample } from '../../stations/samples.ts';

const said = ({ id, severity, message, hookups, moments }: Finding) => ({ id, severity, message, hookups, moments });

/** Some acts with what a survey from scratch finds after each that was not found before; nothing where it is notes alone. */
function fromScratch(station: Station, isTried: (i: number) => boolean) {
  const before = new Set(survey(station).findings.map(({ id }) => id));
  return listActs(station).flatMap((act, i) => {
    if (!isTried(i)) return [];
    const come = survey(edit(station, act.change)).findings.filter(({ id }) => !before.has(id));
    return [{ act, harms: come.some(({ severity }) => severity !== 'note') ? come : [] }];
  });
}

/** Holds a study, whose surveys remember, to surveys from scratch of some of its acts. */
function expectSame(station: Station, isTried: (i: number) => boolean = () => true) {
  const study = studyMixUps(station);
  const listed = new Map(study.mixUps.flatMap((one) => [one.act, ...one.alike].map(({ id }) => [id, one] as const)));
  expect(study.tried).toBe(listActs(station).length);
  expect(study.harmless).toBe(study.tried - listed.size);
  for (const { act, harms } of fromScratch(station, isTried)) {
    const one = listed.get(act.id);
    // Of what comes to the same the first act's harms are kept; the others have the same rules and severities.
    if (one?.act.id === act.id) expect(one.harms.map(said), act.words).toEqual(harms.map(said));
    const sorts = (list: readonly Finding[]) => list.map(({ rule, severity }) => `${rule} ${severity}`);
    expect(sorts(one?.harms ?? []), act.words).toEqual(sorts(harms));
  }
  return study;
}

describe('a study finds what a survey from scratch after each act finds', () => {
  it.each([
    ['hut', 1],
    ['hill-table', 3],
    ['two-metre-mast', 24],
    ['old-and-new', 8],
  ])('%s, every act or one in %i', (name, step) => {
    const { mixUps } = expectSame(sample(name), (i) => i % step === 0);
    expect(mixUps.length).toBeGreaterThan(0);
    const ranks = mixUps.map(({ severity, ease }) => severities.indexOf(severity) * 1000 - ease.score);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });
  it('on stations drawn at random with few cables', () => {
    const few = anyStation.map((station) => {
      const ids = station.cables.slice(4).map(({ id }) => id);
      const left = edit(station, { type: 'removeCables', ids });
      const ends = new Set(left.cables.flatMap(({ a, b }) => [a.unit, b.unit]));
      return edit(left, { type: 'removeUnits', ids: left.units.filter((u) => !ends.has(u.id)).map((u) => u.id) });
    });
    let listed = 0;
    fc.assert(
      fc.property(few, (station) => {
        listed += expectSame(station).mixUps.length;
      }),
      { numRuns: 50 },
    );
    // Whatever is drawn: stations with nothing to list would prove nothing.
    expect(listed).toBeGreaterThan(0);
  });
});

describe('what rings tell', () => {
  const hut = sample('hut');
  const { mixUps } = studyMixUps(hut);
  const danger = mixUps.find(({ act, severity }) => severity === 'danger' && act.kind === 'exchanged')!;
  const [jack] = danger.act.at.flatMap((place) =>
    'unit' in place && place.port !== undefined ? [{ unit: place.unit, port: place.port }] : [],
  );
  it('is counted and not tried', () => {
    const rings = { ...findUnit(hut, jack!.unit)?.rings, [jack!.port]: 'BU' as const };
    const ringed = edit(hut, { type: 'updateUnit', id: jack!.unit, set: { rings } });
    let tries = 0;
    const study = studyMixUps(ringed, () => {
      tries += 1;
    });
    const ids = study.mixUps.flatMap(({ act, alike }) => [act, ...alike]).map(({ id }) => id);
    expect(ids).not.toContain(danger.act.id);
    expect(study.prevented).toBeGreaterThan(0);
    expect(tries).toBe(study.tried);
    expect(study.tried + study.prevented).toBe(listActs(ringed).length);
  });
});

it('tells after each try how many of how many are done', () => {
  const station = drawStation({
    units: { supply: 'bench-supply', strip: 'fused-strip', receiver: 'receiver-without-mute' },
    cables: ['supply.out > strip.input', 'strip.one > receiver.power'],
  });
  const told: string[] = [];
  const { tried } = studyMixUps(station, (done, of) => told.push(`${done}/${of}`));
  expect(told).toEqual(Array.from({ length: tried }, (_, i) => `${i + 1}/${tried}`));
});

it('says when a mix-up strikes and why it happens', () => {
  const found = studyMixUps(sample('hut')).mixUps.find(({ act }) => act.words === 'R2 and R3 exchanged at Changeover');
  expect(found).toMatchObject({
    severity: 'danger',
    strikes: 'at the first press',
    ease: { words: ['two alike jacks on one panel', 'the two leads look the same'] },
  });
});
