import { describe, expect, it } from 'vitest';
import { cableKinds } from '../../core/catalog/cables/cable-kinds.ts';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { edit } from '../../core/station/edit.ts';
import { sample, sampleReport } from '../stations/samples.ts';

// The hill table worked out by hand. Inputs are the catalogue's and the drawing's own figures.
const station = sample('hill-table');
const report = sampleReport('hill-table');
const serious = (from = report) => from.findings.filter((f) => f.severity !== 'note');

/** Copper at 20 °C, ohms per metre: NBS Handbook 100, ohms per 1000 ft. */
const [awg6, awg12, awg14] = [0.3951 / 304.8, 1.588 / 304.8, 2.525 / 304.8];
const [pole15, pole30, stud] = [0.0009, 0.00043, 0.0002];
const fuse15 = 0.0048; // cold
const holder = 0.002;

// Transceiver 10 A and tuner 0.3 A sending, and 5 V through 10 kΩ in its key line; 1 A and 0.3 A in receive.
const sending = 10 + 0.3 + 5 / 10_000;
const receive = 1 + 0.3;
/** Both cores of the lead from the car, and its fuse. */
const carLead = (wire: number) => 2 * (pole30 + 6 * wire + stud) + fuse15;
/** Strip and 0.8 m of 12 AWG. */
const rest = holder + fuse15 + 0.0005 + 2 * (pole15 + 0.8 * awg12 + pole30);
const lost = (wire: number) => carLead(wire) * sending + rest * 10;
/** Inside the battery. */
const inside = 0.02 * sending;

describe('volts of the hill table', () => {
  it('loses 1.27 V of 13.39 V on the way to the transceiver, most of it in the lead from the car', () => {
    const [drop] = serious();
    expect(drop?.rule).toBe('power/voltage-drop');
    expect(drop?.at).toEqual([{ unit: 'transceiver', port: 'power' }]);
    expect(Number(drop?.values.volts)).toBeCloseTo(13.6 - inside, 3);
    expect(Number(drop?.values.drop) / lost(awg14)).toBeCloseTo(1, 2);
    expect(drop?.values.where).toBe('D1');
    // 5 % is what the drawing asks for.
    expect(Number(drop?.values.share)).toBeCloseTo(lost(awg14) / (13.6 - inside), 2);
  });
  it('loses as much in that lead on the way to the tuner', () => {
    expect(serious().map((f) => [f.rule, f.at[0]])).toContainEqual([
      'power/voltage-drop',
      { unit: 'tuner', port: 'power' },
    ]);
  });
});

describe('hours of the hill table’s battery', () => {
  // A quarter of the time sending with the carrier on throughout.
  const average = receive + 0.25 * (sending - receive);
  // Peukert, 1.03 for LiFePO4: 30 Ah at the 20 hours' rate.
  const full = 20 * (30 / (average * 20)) ** 1.03;
  const battery = (from = report) => from.budget.batteries.find((b) => b.hookup === 'air');

  it('would be 8.2 if it could be emptied', () => {
    expect(battery()?.averageAmps).toBeCloseTo(average, 3);
    expect(battery()?.hours).toBeCloseTo(full, 2);
  });

  // The transceiver works from 11.7 V. Rested cells have 12.0, 12.8, 13.0 and 13.2 V at a charge of 0.1, 0.2, 0.3, 0.4.
  it('are 5.1, as the transceiver quits at a charge of 0.38, and 6 are asked for', () => {
    const needed = 11.7 + inside + lost(awg14);
    const charge = 0.3 + (0.1 * (needed - 13)) / 0.2;
    expect(battery()?.quits).toBe('Transceiver');
    expect(battery()?.quitCharge).toBe(Math.floor(charge * 100) / 100);
    expect(battery()?.usableHours).toBeCloseTo(full * (1 - 0.38), 2);
    const finding = serious().find((f) => f.rule === 'power/battery-too-small');
    expect(finding?.at).toEqual([{ unit: 'battery' }]);
    expect(finding?.values).toMatchObject({ hours: '5.1', plan: '6', left: (30 * 0.38).toFixed(1) });
  });

  it('are 7.2 with a lead of 6 AWG, and nothing above a note is left', () => {
    const needed = 11.7 + inside + lost(awg6);
    const charge = 0.1 + (0.1 * (needed - 12)) / 0.8;
    const kind = cableKinds.find((k) => k.id === 'lead-awg-6')?.kind;
    const d1 = station.cables.find((c) => c.id === 'd1');
    if (!kind || !d1) throw new Error('no lead');
    const bare = edit(station, { type: 'removeCables', ids: ['d1'] });
    const thick = surveyReport(
      edit(bare, {
        type: 'addCables',
        cables: [{ ...d1, kind: 'lead-awg-6' }],
        carried: { cableKinds: { 'lead-awg-6': kind } },
      }),
    );
    expect(serious(thick).map((f) => f.message)).toEqual([]);
    expect(battery(thick)?.quitCharge).toBe(Math.floor(charge * 100) / 100);
    expect(battery(thick)?.usableHours).toBeCloseTo(full * (1 - 0.13), 2);
  });
});

it('says three things of the hill table, all of them doubts of its lead', () => {
  expect(serious().map((f) => `${f.severity} ${f.rule}`)).toEqual([
    'doubt power/voltage-drop',
    'doubt power/voltage-drop',
    'doubt power/battery-too-small',
  ]);
});

it('brings 0.5 V to the computer: 0.5 V behind 20 Ω into 10 kΩ', () => {
  const rows = report.audio.filter((a) => a.hookup === 'air');
  expect(rows.map((a) => [a.source, a.sink])).toEqual([
    ['Transceiver · phones, tip', 'Sound interface · receive, tip'],
  ]);
  expect(rows[0]?.volts).toBeCloseTo((0.5 * 10_000) / 10_020, 4);
});

it('sends at the program’s word: RF 17 ms after it, and for 4 ms after its end', () => {
  const keydown = report.keydowns.find((k) => k.hookup === 'air' && k.controlName === 'Sound interface');
  // 60 ms is a dit at the plan's 20 words a minute, for which every control is held at least.
  expect(keydown?.lanes.find((l) => l.name === 'Transceiver RF')?.spans).toEqual([[17, 60 + 4]]);
  // 45 dBm.
  expect(keydown?.rf?.watts).toBeCloseTo(10 ** 1.5, 2);
});
