import { describe, expect, it } from 'vitest';
import { worstWay } from '../../core/reports/budget/ways/way-rows.ts';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { awg14, awg20, barrel, fuse3, holder, lead, pole, returns, ring, stud, way } from '../samples/hut-by-hand.ts';
import { drawStation } from '../stations/draw.ts';
import { sampleReport } from '../stations/samples.ts';

const { budget } = sampleReport('hut');
const hutWay = (name: string) => budget.ways.find((w) => w.name === name && w.hookup === 'air');

describe('the way to the hut’s transmitter, by hand', () => {
  // Sending: 620 mA and what its key line takes through 4.7 kΩ go out. What the three closed lines take (5 V through
  // 4.7 kΩ, 12 V through 1 kΩ and 1.5 Ω, 5 V through 10 kΩ) comes back in the changeover's box; the return is shared by the
  // braids of all boxes.
  const own = 0.62 + 5 / 4700;
  const all = 0.7636;
  const lines = 5 / 4700 + 12 / 1001.5 + 5 / 10_000;
  const back = returns(0.62, 0.045 + lines, 0.085).tx / (lead(0.8) + way);
  const rows: [name: string, kind: string, amps: number, ohms: number][] = [
    ['D1 at Bench supply · output', 'contact', all, ring],
    ['D1, plus core', 'lead', all, 0.8 * awg14],
    ['D1 at Fused strip · in', 'contact', all, stud],
    ['Fuse of Fused strip · 1', 'fuse', own, fuse3 + holder],
    ['D2 at Fused strip · 1', 'contact', own, pole],
    ['D2, plus core', 'lead', own, 0.8 * awg20],
    ['D2 at Transmitter · power', 'contact', own, barrel],
    ['D2 at Transmitter · power', 'contact', back, barrel],
    ['D2, minus core', 'lead', back, 0.8 * awg20],
    ['D2 at Fused strip · 1', 'contact', back, pole],
    ['Inside Fused strip', 'inside', back, way],
    ['D1 at Fused strip · in', 'contact', all, stud],
    ['D1, minus core', 'lead', all, 0.8 * awg14],
    ['D1 at Bench supply · output', 'contact', all, ring],
  ];
  const parts = hutWay('Transmitter')?.parts ?? [];
  it('goes through these and nothing else', () =>
    expect(parts.map((p) => [p.name, p.kind, p.back])).toEqual(rows.map(([n, kind], i) => [n, kind, i > 6])));
  it.each(rows.map((row, i) => [row[0], i] as const))('%s (%i)', (_, i) => {
    const [, , amps, ohms] = rows[i]!;
    expect(Math.abs((parts[i]?.amps ?? 0) / amps - 1)).toBeLessThan(0.005);
    expect(Math.abs((parts[i]?.dropVolts ?? 0) / (amps * ohms) - 1)).toBeLessThan(0.005);
  });
  it('is the worst of the three', () => {
    const here = budget.ways.filter((w) => w.hookup === 'air');
    expect(here.map((w) => w.name)).toEqual(['Transmitter', 'Changeover', 'Receiver']);
    expect(worstWay(here)?.name).toBe('Transmitter');
    expect(worstWay([])).toBeUndefined();
  });
});

describe.each(['hut', 'hut-first-draft'])('the ways of %s', (name) => {
  const report = sampleReport(name);
  it('drop together what the load lacks of the supply’s voltage', () => {
    expect(report.budget.ways.length).toBeGreaterThan(0);
    for (const way of report.budget.ways) {
      const dropped = way.parts.reduce((sum, part) => sum + part.dropVolts, 0);
      expect(dropped).toBeCloseTo(way.supplyVolts - way.loadVolts, 9);
      const row = report.budget.loads.find(
        (l) => l.hookup === way.hookup && l.unit === way.unit && l.element === way.element,
      );
      expect(way.loadVolts).toBe(row?.sendingVolts);
      expect(way.dropVolts).toBeCloseTo(row?.dropVolts ?? Number.NaN, 9);
    }
  });
});

describe('a way through a diode', () => {
  const station = drawStation({
    units: { supply: 'bench-supply', joiner: 'diode-joiner', rig: 'cw-transmitter-3w' },
    cables: ['supply.out > joiner.one', 'joiner.output > rig.power'],
  });
  const { ways, loads } = surveyReport(station).budget;
  it('names the diode, which takes most of what is lost', () => {
    const rig = ways.find((w) => w.unit === 'rig');
    const diode = rig?.parts.find((p) => p.kind === 'diode');
    expect(diode?.name).toBe('Diode in joiner');
    expect(diode?.amps).toBeCloseTo(0.035, 4);
    for (const part of rig?.parts ?? []) if (part !== diode) expect(part.dropVolts).toBeLessThan(diode?.dropVolts ?? 0);
    expect(rig?.dropVolts).toBeCloseTo(loads.find((l) => l.unit === 'rig')?.dropVolts ?? 0, 9);
  });
});

describe('a return that has two ways', () => {
  it('is told by the one that takes most of the current, though the other has less resistance', () => {
    // In the first draft the changeover's own lead is thin: the braid to the transmitter has less resistance, but what
    // flows in it comes from the transmitter.
    const way = sampleReport('hut-first-draft').budget.ways.find((w) => w.name === 'Changeover');
    expect(way?.parts.map((p) => p.name)).toContain('D3, minus core');
    for (const part of way?.parts ?? []) expect(part.amps, part.name).toBeGreaterThan(0);
  });
});

describe('what has no way', () => {
  it('a load whose fuse has gone, or that hangs on nothing', () => {
    const draft = sampleReport('hut-first-draft').budget;
    // Plus and minus of the receiver's lead are swapped: its fuse opens.
    expect(draft.ways.some((w) => w.name === 'Receiver')).toBe(false);
    const alone = surveyReport(drawStation({ units: { rig: 'cw-transmitter-3w' } })).budget;
    expect(alone.ways).toEqual([]);
    expect(alone.branches).toEqual([]);
  });
});
