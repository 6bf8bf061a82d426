import { describe, expect, it } from 'vitest';
import { whatToBuy } from '../../core/reports/buy/what-to-buy.ts';
import { listCables } from '../../core/reports/cables/list-cables.ts';
import { flagsOf } from '../../core/reports/flags/flag-text.ts';
import { isPressing } from '../../core/reports/is-pressing.ts';
import { isReadyMade } from '../../core/reports/make/is-ready-made.ts';
import { hookupsOf, kindOf } from '../../core/station/parts.ts';
import { plugOf } from '../../core/station/plug-of.ts';
import { powerUpSheet } from '../reports/power-up/power-up-sheet.ts';
import { sample, sampleNames, sampleReport } from '../stations/samples.ts';

const ends = ['a', 'b'] as const;
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

describe.each(sampleNames)('the papers of %s', (name) => {
  const station = sample(name);
  const ids = station.cables.map((c) => c.id).sort();
  const made = station.cables.filter((c) => !isReadyMade(station, c));
  const bought = whatToBuy(station, { leaveOutDone: false });
  const inGroup = (group: string) => bought.filter((row) => row.group === group);

  it('list every cable once, and print both its flags', () => {
    expect(
      listCables(station)
        .map((row) => row.id)
        .sort(),
    ).toEqual(ids);
    const flags = flagsOf(station).map((f) => `${f.cable} ${f.end}`);
    expect(flags.sort()).toEqual(ids.flatMap((id) => ends.map((end) => `${id} ${end}`)).sort());
  });

  it('buy each kind of cable for all that are cut from it: their lengths, and at each end no more than is stripped', () => {
    for (const row of inGroup('cable')) {
      const cut = made.filter((c) => station.cableKinds[c.kind]?.name === row.what);
      const length = sum(cut.map((c) => c.lengthM));
      expect([...row.for].sort()).toEqual(cut.map((c) => c.number).sort());
      expect(row.used).toBeGreaterThanOrEqual(length);
      expect(row.used).toBeLessThanOrEqual(length + 0.1 * cut.length);
      expect(row.count).toBeGreaterThanOrEqual(row.used);
    }
    expect(inGroup('cable').flatMap((row) => row.for)).toHaveLength(made.length);
  });

  it('buy plugs for both ends of each of them, and ready-made cables by the piece', () => {
    const wanted = made.flatMap((c) => ends.map((end) => ({ number: c.number, plug: plugOf(station, c, end) })));
    for (const row of inGroup('plug')) {
      const own = wanted.filter(({ plug }) => plug?.name === row.what).map((w) => w.number);
      expect([...new Set(row.for)].sort()).toEqual([...new Set(own)].sort());
      // A pair of terminals is a piece for each contact.
      expect(row.used % own.length).toBe(0);
      expect(row.count).toBe(row.used);
    }
    expect(sum(inGroup('ready-made').map((row) => row.count))).toBe(station.cables.length - made.length);
  });

  it('buy a fuse for every holder in a unit and every fuse in a lead', () => {
    const inUnits = station.units.flatMap((unit) =>
      kindOf(station, unit).elements.filter((e) => e.type === 'conductor' && e.fuseAmps !== undefined),
    );
    const inLeads = station.cables.filter((c) => c.fuse);
    expect(sum(inGroup('fuse').map((row) => row.used))).toBe(inUnits.length + inLeads.length);
    // And one of each rating to spare.
    for (const row of inGroup('fuse')) expect(row.count).toBe(row.used + 1);
  });
});

const isMistaken = (name: string): boolean => sampleReport(name).findings.some(isPressing);

describe.each(sampleNames.filter((name) => !isMistaken(name)))('the power-up sheet of %s', (name) => {
  const station = sample(name);

  it('tell of each supply, once everything is plugged in, the amperes that the survey found in receive', () => {
    const { parts, hookup } = powerUpSheet(station);
    const id = hookupsOf(station).find((h) => h.name === hookup)?.id;
    const { budget } = sampleReport(name);
    const steps = parts.find((p) => p.id === 'units')?.steps.filter((s) => s.expected?.quantity === 'A') ?? [];
    const last = new Map(steps.flatMap((s) => s.at.flatMap((p) => ('unit' in p ? [[p.unit, s] as const] : []))));
    expect(last.size).toBeGreaterThan(0);
    for (const [unit, step] of last) {
      const rows = budget.supplies.filter((s) => s.unit === unit && s.hookup === id);
      const amps = rows.map((row) => row.receiveAmps);
      // What is plugged in later at another supply moves it by less than a microampere, through screens that they share.
      expect(amps.some((a) => Math.abs(a - (step.expected?.value ?? Number.NaN)) < 1e-6)).toBe(true);
    }
  });
});

describe.each(sampleNames.filter(isMistaken))('the power-up sheet of %s, which has a mistake in it', (name) => {
  const { parts } = powerUpSheet(sample(name));

  it('tells nobody to send', () => {
    const ids = parts.flatMap((part) => part.steps.map(({ id }) => id));
    expect(ids.filter((id) => id.endsWith('/hold'))).toEqual([]);
    expect(ids.filter((id) => /\/(stop|plug|none)$/.test(id)).length).toBeGreaterThan(0);
  });
});
