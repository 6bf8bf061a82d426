import { describe, expect, it } from 'vitest';
import { sample } from '../../stations/samples.ts';
import { firstOff, type Plant, plantsIn } from './plants.ts';
import { draftOf } from './power-up-sheet.ts';

const faults = ['bad joint', 'blown fuse', 'swapped pair', 'dead relay', 'shorted coax', 'mute line open'] as const;

/** The first of each fault: the largest sample has eighty places for them. */
const firstOfEach = (plants: readonly Plant[]): Plant[] =>
  faults.flatMap((fault) => plants.find((plant) => plant.fault === fault) ?? []);

const drafts = {
  hut: draftOf(sample('hut')),
  'hill-table': draftOf(sample('hill-table')),
  'two-metre-mast': draftOf(sample('two-metre-mast')),
  'club-hall': draftOf(sample('club-hall')),
};

/** The samples whose sheet goes on to the end: that of one with a mistake in it stops there. */
const planted: [keyof typeof drafts, Plant[]][] = [
  ['hut', plantsIn(drafts.hut)],
  ['hill-table', plantsIn(drafts['hill-table'])],
  ['two-metre-mast', firstOfEach(plantsIn(drafts['two-metre-mast']))],
  ['club-hall', firstOfEach(plantsIn(drafts['club-hall']))],
];

const rows = planted.flatMap(([name, plants]) =>
  plants.map((plant) => {
    const { step, causes } = firstOff(drafts[name], plant);
    return { name, fault: plant.fault, what: plant.what, step, isNamed: causes.some((cause) => plant.isNamed(cause)) };
  }),
);

describe('a fault planted in a sample, found with the sheet', () => {
  it('is among the three causes that are named, nine times in ten', () => {
    const missed = rows.filter(({ isNamed }) => !isNamed);
    expect(missed.length, JSON.stringify(missed)).toBeLessThanOrEqual(rows.length / 10);
  });
  it.each(faults)('has been tried: %s', (fault) =>
    expect(rows.filter((row) => row.fault === fault).length).toBeGreaterThan(1),
  );
  it('a joint of 50 milliohm shows at some reading wherever more than 5 A go through it', () => {
    const joints = rows.filter(({ fault }) => fault === 'bad joint');
    expect(joints.length).toBeGreaterThan(2);
    expect(joints.filter(({ step }) => step === '')).toEqual([]);
  });
});
