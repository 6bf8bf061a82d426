import { describe, expect, it } from 'vitest';
import type { CableReading, Overlay } from '../../core/reports/report-rows.ts';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { drawStation } from '../stations/draw.ts';
import { sample, sampleReport } from '../stations/samples.ts';

const hut = sample('hut');
const report = sampleReport('hut');

describe('the cable list', () => {
  it('has every cable of the document once', () => {
    expect(report.cables.map((c) => c.id).sort()).toEqual(hut.cables.map((c) => c.id).sort());
  });
  it('counts as people do: D2 before D10', () => {
    const units = Object.fromEntries(
      ['supply', ...Array.from({ length: 11 }, (_, i) => `tx${i}`)].map((id) => [
        id,
        id === 'supply' ? 'bench-supply' : 'cw-transmitter-3w',
      ]),
    );
    const many = drawStation({ units, cables: Array.from({ length: 11 }, (_, i) => `supply.out > tx${i}.power`) });
    expect(surveyReport(many).cables.map((c) => c.number)).toEqual(Array.from({ length: 11 }, (_, i) => `D${i + 1}`));
  });
  it('says in words what the document has in ids', () => {
    expect(report.cables.find((c) => c.number === 'D4')).toMatchObject({
      from: 'Fused strip · 3',
      to: 'Receiver · power',
      wiring: 'plus–shell, minus–centre',
      hookups: [],
    });
    expect(report.cables.find((c) => c.number === 'R4')?.hookups).toEqual(['On the dummy load']);
  });
});

describe('the budget', () => {
  it('has a row for each supply, load, used fuse and power cable in each hook-up', () => {
    const { supplies, loads, fuses, wires } = report.budget;
    expect([supplies.length, loads.length, fuses.length, wires.length]).toEqual([2, 6, 6, 8]);
  });
  it('what the branches carry is what the supply gives', () => {
    const sum = report.budget.fuses.filter((f) => f.hookup === 'air').reduce((all, f) => all + f.sendingAmps, 0);
    expect(sum).toBeCloseTo(report.budget.supplies[1]?.sendingAmps ?? 0, 6);
  });
  it('names the thinnest wire behind a fuse and what it stands', () => {
    expect(report.budget.fuses.find((f) => f.element === 'fuse-one')).toMatchObject({
      ratedAmps: 3,
      guards: 'D2, AWG 20',
      wireLimitAmps: 5,
    });
  });
  it('drops on the way to a load are the volts that it lacks', () => {
    for (const load of report.budget.loads) {
      const supply = report.budget.supplies.find((s) => s.hookup === load.hookup);
      expect((supply?.sendingVolts ?? 0) - load.dropVolts).toBeCloseTo(load.sendingVolts, 9);
    }
  });
});

const overlay = (moment: Overlay['moment']) =>
  report.overlays.find((o) => o.hookup === 'dummy' && o.moment === moment) as Overlay;
const cable = (moment: Overlay['moment'], id: string) => overlay(moment).cables[id] as CableReading;

describe('the live picture', () => {
  it('shows who has power, who is active, who sends', () => {
    expect(overlay('receive').units.transmitter).toMatchObject({ powered: true, active: [], sending: false });
    expect(overlay('sending').units.transmitter).toMatchObject({ active: ['RF'], sending: true });
    expect(overlay('sending').units.receiver?.active).toEqual(['Mute']);
  });
  it('RF runs on the selected path; what leaks is no path', () => {
    expect(cable('receive', 'r1').dbm).toBeNull();
    expect(cable('sending', 'r1')).toMatchObject({ carriesRf: true });
    // 34.8 dBm is 3.02 W at the transmitter's jack.
    expect(cable('sending', 'r1').watts).toBeCloseTo(3.02, 2);
    expect(cable('sending', 'r3').carriesRf).toBe(false);
    // 35 dB of isolation and two short cables below: about half a milliwatt below 0 dBm.
    expect(cable('sending', 'r3').dbm).toBeCloseTo(34.8 - 35.2, 0);
  });
  it('a cable that is not plugged in has no reading', () => expect(overlay('sending').cables.r5).toBeUndefined());
  it('a power cable shows its volts and the current of both cores', () => {
    expect(cable('sending', 'd1').amps).toBeCloseTo(0.7636, 3);
    expect(cable('sending', 'd1').returnAmps).toBeCloseTo(0.7636, 3);
    expect(cable('sending', 'd1').volts).toBeCloseTo(13.76, 2);
  });
});
