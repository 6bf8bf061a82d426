import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { describeChange } from '../../core/reports/changes/describe-change.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { limitOfOwnFigure } from '../../core/station/own-figure.ts';
import type { Station, Unit } from '../../core/station/schema/schema.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const accept = (finding: string): Change => ({ type: 'accept', acceptance: { finding, reason: 'so', figures: '' } });
const read = (step: string): Change => ({
  type: 'addReading',
  reading: { step, value: 1, unit: 'V', when: '2026-03-01' },
});
const all = (station: Station, ...changes: Change[]): Station => changes.reduce(edit, station);

describe('what goes along', () => {
  it('with a unit: what was accepted and read at it, which the next unit of its id would take for its own', () => {
    const lead = hut.cables.find((c) => [c.a.unit, c.b.unit].includes('receiver'))?.id;
    const full = all(
      hut,
      accept('power/x:y@receiver.power'),
      accept('power/x:y@transmitter.power'),
      accept(`power/x:y@cable ${lead}.a`),
      read('unit/receiver/amps'),
      read('supply/supply.output/volts'),
      read(`line/${lead}/ohms`),
    );
    const left = edit(full, { type: 'removeUnits', ids: ['receiver'] });
    expect(left.accepted.map((a) => a.finding)).toEqual(['power/x:y@transmitter.power']);
    expect(left.readings.map((r) => r.step)).toEqual(['supply/supply.output/volts']);
  });

  it('with a cable: what was accepted and read at it, and at no other', () => {
    const [one, two] = hut.cables.map((c) => c.id);
    const full = all(hut, accept(`a/b:c@cable ${one}`), accept(`a/b:c@cable ${two}`), read(`lead/${one}/through`));
    const left = edit(full, { type: 'removeCables', ids: [one ?? ''] });
    expect(left.accepted.map((a) => a.finding)).toEqual([`a/b:c@cable ${two}`]);
    expect(left.readings).toEqual([]);
  });

  it('with another description of a kind: own figures, settings and sides that it does not have', () => {
    const coax = all(hut, placeUnit(hut, 'coax-switch', { x: 0, y: 0 }));
    const unit = coax.units.at(-1) as Unit;
    const kind = coax.kinds['coax-switch'] as UnitKind;
    const [setting] = kind.settings ?? [];
    const element = kind.elements.find((e) => e.type === 'rfPath');
    const [port] = kind.ports;
    if (!setting || !element || !port) throw new Error('a coax switch has these');
    const key = `${element.id}.lossDb`;
    const full = all(
      coax,
      {
        type: 'updateUnit',
        id: unit.id,
        set: {
          overrides: { [key]: 1, 'nobody.volts': 2 },
          settings: { [setting.id]: setting.initial },
          sides: { [port.id]: 'top' },
        },
      },
      { type: 'updateHookup', id: 'dummy', set: { settings: { [unit.id]: { [setting.id]: setting.initial } } } },
    );
    const bare: UnitKind = { ...kind, ports: [{ ...port, id: 'only' }], elements: [], settings: [] };
    const left = edit(full, { type: 'setKind', id: 'coax-switch', kind: bare, connectors: {} });
    // What named nothing before is not this change's to take.
    const { settings: _, sides: __, overrides, ...rest } = full.units.at(-1) as Unit;
    expect(overrides).toHaveProperty([key]);
    expect(left.units.at(-1)).toEqual({ ...rest, overrides: { 'nobody.volts': 2 } });
    expect(left.hookups.find((h) => h.id === 'dummy')?.settings).toEqual({});
  });
});

type Make = (station: Station) => Change;
it('units brought from elsewhere keep no figure that the kind has not here', () => {
  const kind = hut.kinds['bench-supply'] as UnitKind;
  const unit: Unit = { id: 'new', kind: 'bench-supply', name: 'New', position: { x: 0, y: 0 } };
  const other: UnitKind = { ...kind, elements: kind.elements.map((e) => ({ ...e, id: `${e.id}-b` })) };
  const [own, there] = [kind, other].map((k) => k.elements.find((e) => e.type === 'supply')?.id);
  const added = edit(hut, {
    type: 'addUnits',
    units: [{ ...unit, overrides: { [`${own}.volts`]: 12, [`${there}.volts`]: 12, 'nobody.volts': 1 } }],
    carried: { kinds: { 'bench-supply': other } },
  });
  expect(added.units.at(-1)?.overrides).toEqual({ [`${own}.volts`]: 12, 'nobody.volts': 1 });
});

const nothing: Change = { type: 'describe', set: {} };
const at = <T>(items: readonly T[], n: number): T | undefined => items[n % Math.max(1, items.length)];

/** Own figures, settings, sides, acceptances and readings that are right when they are made. */
const meaning: fc.Arbitrary<Make> = fc
  .record({ what: fc.nat(4), n: fc.nat(), m: fc.nat() })
  .map(({ what, n, m }) => (s) => {
    const unit = at(s.units, n);
    const kind = s.kinds[unit?.kind ?? ''];
    if (!unit || !kind) return nothing;
    const set = (fields: Partial<Unit>): Change => ({ type: 'updateUnit', id: unit.id, set: fields });
    const port = at(kind.ports, m)?.id ?? '';
    switch (what) {
      case 0: {
        const keys = kind.elements.flatMap((e) =>
          Object.entries(e).map(([field, value]) => [`${e.id}.${field}`, value] as const),
        );
        const [key, value] =
          at(
            keys.filter(([k]) => limitOfOwnFigure(kind, k)),
            m,
          ) ?? [];
        return typeof value === 'number' && key ? set({ overrides: { ...unit.overrides, [key]: value } }) : nothing;
      }
      case 1: {
        const setting = at(kind.settings ?? [], m);
        const own = setting && { [setting.id]: setting.initial };
        const hookup = at(s.hookups, n);
        if (!own || !hookup) return nothing;
        if (m % 2) return set({ settings: { ...unit.settings, ...own } });
        return { type: 'updateHookup', id: hookup.id, set: { settings: { ...hookup.settings, [unit.id]: own } } };
      }
      case 2:
        return set({ sides: { ...unit.sides, [port]: 'top' } });
      case 3:
        return accept(m % 2 ? `a/b:c@${unit.id}.${port}` : `a/b:c@cable ${at(s.cables, m)?.id}.a`);
      default:
        return read(`unit/${unit.id}/volts`);
    }
  });

const loss: fc.Arbitrary<Make> = fc
  .record({ what: fc.nat(4), n: fc.nat(), m: fc.nat() })
  .map(({ what, n, m }) => (s) => {
    const [unit, cable] = [at(s.units, n), at(s.cables, n)];
    const kind = s.kinds[unit?.kind ?? ''];
    switch (what) {
      case 0:
        return { type: 'removeUnits', ids: [unit?.id ?? ''] };
      case 1:
        return { type: 'removeCables', ids: [cable?.id ?? ''] };
      case 2:
        return m % 2 ? { type: 'removeHookup', id: 'dummy' } : placeUnit(s, 'coax-switch', { x: 0, y: 0 });
      case 3: {
        const [a, b] = [unit, at(s.units, m)];
        const [from, to] = [a, b].map((u) => at(s.kinds[u?.kind ?? '']?.ports ?? [], n)?.id);
        if (!a || !b || a === b || !from || !to) return nothing;
        return layCable(s, { unit: a.id, port: from }, { unit: b.id, port: to });
      }
      default: {
        if (!unit || !kind) return nothing;
        // Without its last elements that nothing else names, and without settings that no condition names.
        const fewer: UnitKind = { ...kind, elements: [], actors: [], settings: [] };
        return { type: 'setKind', id: unit.kind, kind: fewer, connectors: {} };
      }
    }
  });

describe('law', () => {
  it('any edits leave a file without a remark, and say in words what they do', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(meaning, meaning, loss), { minLength: 1, maxLength: 25 }), (made) => {
        let station = hut;
        let text = writeStation(hut);
        for (const make of made) {
          const change = make(station);
          const lines = describeChange(station, change);
          station = edit(station, change);
          const after = writeStation(station);
          expect(lines.length > 0).toBe(after !== text);
          text = after;
        }
        const again = readStation(text);
        expect('problems' in again ? again.problems : again.remarks).toEqual([]);
        expect('station' in again && writeStation(again.station)).toBe(text);
      }),
      { numRuns: 60 },
    );
  });
});
