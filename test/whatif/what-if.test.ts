import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { type Supposed, variablesOf, whatIf } from '../../core/whatif/what-if.ts';
import { made } from '../rules/made.ts';
import { d1, fuse3, holder, lead, returns } from '../samples/hut-by-hand.ts';
import { drawStation } from '../stations/draw.ts';
import { sample, sampleReport } from '../stations/samples.ts';

const hut = sample('hut');
const budgetWith = (supposed: Supposed) => surveyReport(whatIf(hut, supposed)).budget;
const asDrawn = sampleReport('hut').budget;
const air = <T extends { hookup: string; name: string }>(rows: readonly T[], name: string) =>
  rows.find((row) => row.hookup === 'air' && row.name === name);

describe('what the hut can vary', () => {
  it('is its supply’s volts and its transmitter’s watts: 34.8 dBm are 3.02 W', () =>
    expect(variablesOf(hut)).toEqual([
      { key: 'supply.output', unit: 'supply', name: 'Bench supply', figure: 'volts', value: 13.8 },
      {
        key: 'transmitter.output',
        unit: 'transmitter',
        name: 'Transmitter',
        figure: 'watts',
        value: expect.closeTo(3.02, 2),
      },
    ]));
  it('two outputs of one box are told apart', () => {
    const charger = drawStation({ units: { charger: 'usb-charger' } });
    const names = variablesOf(charger).map((v) => v.name);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('figures as drawn', () => {
  const drawn = Object.fromEntries(variablesOf(hut).map((v) => [v.key, v.value]));
  it.each([{}, { volts: drawn, watts: drawn, sendShare: hut.plan.sendShare }, { volts: { 'nobody.here': 5 } }])(
    '%j leave the station as it is',
    (supposed) => expect(whatIf(hut, supposed)).toBe(hut),
  );
  it('a hair beside them, the budget is the survey’s', () => {
    const beside = budgetWith({ volts: { 'supply.output': 13.8 + 1e-9 }, watts: { 'transmitter.output': 10 ** 0.48 } });
    for (const [i, load] of asDrawn.loads.entries()) {
      expect(beside.loads[i]?.sendingVolts).toBeCloseTo(load.sendingVolts, 7);
      expect(beside.loads[i]?.sendingAmps).toBeCloseTo(load.sendingAmps, 7);
    }
  });
});

describe('other figures, by hand', () => {
  it('12.6 V: the currents are the same, so as much is lost as before', () => {
    const { supplies, loads } = budgetWith({ volts: { 'supply.output': 12.6 } });
    expect(air(supplies, 'Bench supply')?.sendingAmps).toBeCloseTo(0.7636, 3);
    const back = returns(0.62, 0.045, 0.085).tx;
    const byHand = 12.6 - 0.7636 * (0.05 + 2 * d1) - 0.62 * (fuse3 + holder + lead(0.8)) - back;
    expect(Math.abs((air(loads, 'Transmitter')?.sendingVolts ?? 0) / byHand - 1)).toBeLessThan(0.001);
  });
  it('the highest voltage of a supply moves along', () => {
    const { overrides } = whatIf(hut, { volts: { 'supply.output': 12.6 } }).units.find((u) => u.id === 'supply') ?? {};
    expect(overrides?.['output.maxVolts']).toBeCloseTo(14.1 - 1.2, 9);
  });
  it('half of the time sending at 40 % key down is a fifth', () => {
    const supply = air(budgetWith({ sendShare: 0.5 }).supplies, 'Bench supply');
    expect(supply?.averageAmps).toBeCloseTo(0.12 + 0.2 * (0.7636 - 0.12), 4);
    expect(supply?.sendingAmps).toBe(air(asDrawn.supplies, 'Bench supply')?.sendingAmps);
  });
  it('a quarter of the power: half of the stage’s draw, 6 dB less everywhere', () => {
    const watts = 10 ** 0.48 / 4;
    const report = surveyReport(whatIf(hut, { watts: { 'transmitter.output': watts } }));
    const load = report.budget.loads.find((l) => l.name === 'Transmitter');
    expect(load?.receiveAmps).toBeCloseTo(0.035, 9);
    expect(load?.sendingAmps).toBeCloseTo(0.035 + (0.62 - 0.035) / 2, 9);
    const drawn = sampleReport('hut').rf[0]?.staircase ?? [];
    const stairs = report.rf[0]?.staircase ?? [];
    expect(stairs).toHaveLength(drawn.length);
    for (const [i, stair] of stairs.entries())
      expect(stair.dbm).toBeCloseTo((drawn[i]?.dbm ?? 0) - 20 * Math.log10(2), 6);
  });
  it('a battery at half its charge: 12.3 V at rest (from memory)', () => {
    const battery = drawStation({ units: { battery: 'agm-battery' } });
    const [variable] = variablesOf(battery);
    expect(variable).toMatchObject({ figure: 'charge' });
    const [supply] = surveyReport(whatIf(battery, { charge: { [variable?.key ?? '']: 0.5 } })).budget.supplies;
    expect(supply?.volts).toBeCloseTo(12.3, 9);
  });
  it('a stage that is a resistance: its siemens go down, not its ohms', () => {
    const rig = made(
      { power: ['dc', 'stud-pair'], antenna: ['rf', 'bnc-jack'] },
      [
        {
          ...{ id: 'stage', type: 'load', plus: 'power.plus', minus: 'power.minus', law: 'resistance', amount: 100 },
          ...{ minV: 5, maxV: 15, absMaxV: 16, reverseProtected: false },
          states: [{ when: { on: ['rf'] }, amount: 10 }],
        },
        { id: 'out', type: 'rfSource', port: 'antenna', dbm: 30, when: { on: ['rf'] } },
      ],
      { actors: [{ id: 'rf', label: 'RF', feels: { type: 'operator', label: 'key' }, operateMs: 0, releaseMs: 0 }] },
    );
    const { overrides } =
      whatIf(drawStation({ units: { rig: { made: rig } } }), { watts: { 'rig.out': 0.25 } }).units[0] ?? {};
    // 10 mS idle and 90 mS more at full power: half of that with a quarter of it.
    expect(overrides?.['stage.states.0.amount']).toBeCloseTo(1 / (0.01 + 0.045), 9);
    expect(overrides?.['out.dbm']).toBeCloseTo(30 - 20 * Math.log10(2), 9);
  });
});

it('nothing of this touches the station', () => {
  const before = JSON.stringify(hut);
  whatIf(hut, { volts: { 'supply.output': 5 }, watts: { 'transmitter.output': 1 }, sendShare: 1 });
  expect(JSON.stringify(hut)).toBe(before);
});
