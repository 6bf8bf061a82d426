import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { load, made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';
import { sampleReport } from '../stations/samples.ts';

const hut = sampleReport('hut').budget;

describe('the branches of the hut', () => {
  const here = hut.branches.filter((b) => b.hookup === 'air');
  it('are the supply’s lead and the strip’s three behind it, each with its fuse and what it feeds', () =>
    expect(here.map((b) => [b.name, b.number, b.depth, b.fuses.map((f) => f.ratedAmps), b.loads])).toEqual([
      ['Bench supply · output', 'D1', 0, [], ['Transmitter', 'Changeover', 'Receiver']],
      ['Fused strip · 1', 'D2', 1, [3], ['Transmitter']],
      ['Fused strip · 2', 'D3', 1, [2], ['Changeover']],
      ['Fused strip · 3', 'D4', 1, [1], ['Receiver']],
    ]));
  // 620 mA, 45 mA and 85 mA, and what the pull-ups push into closed lines: 5 V through 4.7 kΩ, 12 V through 1 kΩ and the
  // keyer's 1.5 Ω, 5 V through 10 kΩ.
  it.each([
    ['D2', 0.035, 0.62 + 5 / 4700],
    ['D3', 0, 0.045 + 12 / 1001.5],
    ['D4', 0.085, 0.085 + 5 / 10_000],
  ])('%s carries %d A in receive and %d A sending', (number, receive, sending) => {
    const branch = here.find((b) => b.number === number);
    expect(branch?.receiveAmps).toBeCloseTo(receive, 6);
    expect(branch?.sendingAmps).toBeCloseTo(sending, 5);
    // 40 % key down in a third of the time.
    expect(branch?.averageAmps).toBeCloseTo(receive + (0.4 / 3) * (sending - receive), 5);
    expect(branch?.peakAmps).toBeGreaterThanOrEqual(branch?.sendingAmps ?? 1);
  });
});

describe.each(['hut', 'hut-first-draft'])('in %s', (name) => {
  const { branches, fuses, supplies } = sampleReport(name).budget;
  it('what the loads of a branch draw is what its lead and its fuse carry', () => {
    expect(branches.length).toBeGreaterThan(0);
    for (const branch of branches) {
      expect(branch.drawnAmps, branch.name).toBeCloseTo(branch.sendingAmps, 8);
      for (const { name: seat } of branch.fuses) {
        const fuse = fuses.find((f) => f.hookup === branch.hookup && f.name === seat);
        expect(fuse?.sendingAmps, seat).toBeCloseTo(branch.sendingAmps, 8);
        expect(fuse?.averageAmps, seat).toBeCloseTo(branch.averageAmps, 8);
      }
    }
  });
  it('the first branches together carry what the supply gives', () => {
    for (const supply of supplies) {
      const first = branches.filter((b) => b.hookup === supply.hookup && b.depth === 0);
      const sum = first.reduce((all, b) => all + b.sendingAmps, 0);
      expect(sum).toBeCloseTo(supply.sendingAmps, 8);
    }
  });
});

/** A box with one main fuse before two outlets, and a supply on whose posts two leads are stacked. */
const stacked = drawStation({
  units: {
    supply: 'bench-supply',
    box: {
      made: made(
        { in: ['dc', 'stud-pair'], one: ['dc', 'stud-pair'], two: ['dc', 'stud-pair'] },
        [
          { id: 'main', type: 'conductor', from: 'in.plus', to: '@rail', ohms: 0.001, fuseAmps: 5 },
          { id: 'one', type: 'conductor', from: '@rail', to: 'one.plus', ohms: 0.001 },
          { id: 'two', type: 'conductor', from: '@rail', to: 'two.plus', ohms: 0.001 },
          { id: 'minus-one', type: 'conductor', from: 'in.minus', to: 'one.minus', ohms: 0.001 },
          { id: 'minus-two', type: 'conductor', from: 'in.minus', to: 'two.minus', ohms: 0.001 },
        ],
        { isolated: 'all' },
      ),
    },
    a: { made: made({ power: ['dc', 'stud-pair'] }, [load('power.plus', 'power.minus', 0.25)], { isolated: 'all' }) },
    b: { made: made({ power: ['dc', 'stud-pair'] }, [load('power.plus', 'power.minus', 0.5)], { isolated: 'all' }) },
    c: { made: made({ power: ['dc', 'stud-pair'] }, [load('power.plus', 'power.minus', 1)], { isolated: 'all' }) },
  },
  cables: [
    'supply.out > box.in',
    ['box.one > a.power', { fuse: { amps: 2, family: 'blade', atM: 0.1 } }],
    'box.two > b.power',
    'supply.out > c.power',
  ],
});

describe('a main fuse before two outlets, and two leads on one pair of posts', () => {
  const { branches } = surveyReport(stacked).budget;
  it('the fuse is a branch of its own, the leads behind it follow, each lead on the posts is one', () =>
    expect(
      branches.map((b) => [b.number, b.depth, b.fuses.map((f) => f.ratedAmps), b.loads.join(), b.sendingAmps]),
    ).toEqual([
      ['D1', 0, [], 'a,b', expect.closeTo(0.75, 6)],
      ['', 1, [5], 'a,b', expect.closeTo(0.75, 6)],
      ['D2', 2, [2], 'a', expect.closeTo(0.25, 6)],
      ['D3', 2, [], 'b', expect.closeTo(0.5, 6)],
      ['D4', 0, [], 'c', expect.closeTo(1, 6)],
    ]));
});
