import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../../core/reports/survey-report.ts';
import { acceptFinding } from '../../../core/rules/accept.ts';
import { createStation } from '../../../core/station/create-station.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';
import { powerUpSheet } from './power-up-sheet.ts';
import { readingsOf, stepsToRead } from './read-steps.ts';

const hut = sample('hut');
const draft = sample('hut-first-draft');
const hill = sample('hill-table');
const sheet = powerUpSheet(hut);
const read = readingsOf(hut);

/** NBS Handbook 100: 10.15 Ω per 1000 ft of AWG 20, 2.525 of AWG 14. */
const [awg20, awg14] = [10.15 / 304.8, 2.525 / 304.8];
/** What the pull-ups push into closed lines: 12 V through 1 kΩ and 1.5 Ω, 5 V through 4.7 kΩ, 5 V through 10 kΩ. */
const lines = 12 / 1001.5 + 5 / 4700 + 5 / 10_000;

describe('the hut by hand', () => {
  it.each([
    ['one core of D1, 0.8 m of AWG 14', 'lead/d1/through', 0.8 * awg14, 4],
    ['one core of D2, 0.8 m of AWG 20', 'lead/d2/through', 0.8 * awg20, 4],
    ['one core of D4, 1 m of AWG 20', 'lead/d4/through', awg20, 4],
    ['the dummy load through R4', 'feeder/r4', 50, 1],
    ['the supply alone', 'supply/supply.output/volts', 13.8, 6],
    ['an outlet with nothing on it', 'outlet/strip.one', 13.8, 6],
    ['the receiver’s plug before it goes in', 'unit/receiver/plug', 13.8, 1],
    ['the changeover at rest draws nothing', 'unit/changeover/amps', 0, 4],
    ['with the receiver: 85 mA', 'unit/receiver/amps', 0.085, 6],
    ['with the transmitter as well: 35 mA more', 'unit/transmitter/amps', 0.12, 6],
    ['the changeover’s line at rest', 'lines/k2/rest', 12, 3],
    ['and pulled down, 1.5 Ω under 1 kΩ', 'lines/k2/pressed', (12 * 1.5) / 1001.5, 2],
    ['the mute line at rest', 'lines/k4/rest', 5, 3],
    [
      'pressed without the transmitter: coil and lines',
      'lines/paddle.levers/supply.output/amps',
      0.085 + 0.045 + 12 / 1001.5 + 0.0005,
      4,
    ],
    ['the key line at rest', 'dummy/k3/rest', 5, 3],
    ['sending: 0.7635 A', 'dummy/transmitter/supply.output/amps', 0.62 + 0.085 + 0.045 + lines, 4],
    // 34.8 dBm less 0.2 dB in the relay and 1.2 m of RG-58 at about 5 dB per 100 m.
    ['the meter', 'dummy/transmitter/meter.transmitter/watts', 10 ** ((34.8 - 0.2 - 0.06 - 30) / 10), 1],
    ['its SWR', 'dummy/transmitter/meter.transmitter/swr', 1, 2],
  ])('%s', (_, step, value, digits) => expect(read.get(step)).toBeCloseTo(value, digits));

  it.each(['lead/d4/across', 'holder/strip.fuse-one', 'line/k3/ohms', 'rail/supply.output', 'feeder/r7'])(
    '%s is open',
    (step) => expect(stepsToRead(hut).find((s) => s.id === step)?.expected).toMatchObject({ value: null, to: null }),
  );
});

describe('the order', () => {
  it('is unpowered, supply, distribution, units, lines, dummy load, antenna; then what is no reading', () =>
    expect(sheet.parts.map((p) => p.id)).toEqual([
      'unpowered',
      'supply',
      'distribution',
      'units',
      'lines',
      'dummy',
      'antenna',
      'eyes',
      'storm',
      'spares',
    ]));
  it('plugs in first what draws least, the transmitter last on a line that is whole, and each plug is read before it goes in', () =>
    expect(sheet.parts.find((p) => p.id === 'units')?.steps.map((s) => s.id)).toEqual([
      'unit/line',
      ...['changeover', 'receiver', 'transmitter'].flatMap((u) =>
        ['plug', 'amps', 'volts'].map((what) => `unit/${u}/${what}`),
      ),
    ]));
  it('a unit that feeds others comes before them, however much it draws', () => {
    const station = drawStation({
      units: { supply: 'bench-supply', strip: 'fused-strip', buck: 'buck-converter-5v', rx: 'sdr-receiver-usb' },
      cables: ['supply.out > strip.input', 'strip.one > buck.input'],
    });
    const ids = stepsToRead(station).map((s) => s.id);
    expect(ids).toContain('unit/buck/amps');
    expect(ids.indexOf('outlet/strip.one')).toBeLessThan(ids.indexOf('unit/buck/plug'));
  });
  it('step ids are each there once', () => {
    for (const station of [hut, draft]) {
      const ids = powerUpSheet(station).parts.flatMap((p) => p.steps.map((s) => s.id));
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
  it('a lead that is marked as tested is not measured again', () => {
    const tested = edit(hut, { type: 'updateCable', id: 'd4', set: { status: 'tested' } });
    expect(readingsOf(tested).has('lead/d4/through')).toBe(false);
    expect(readingsOf(tested).size).toBe(read.size - 2);
  });
});

/** The station with only these cables; a survey of its own, not the sheet's. */
const only = (station: Station, keep: (id: string) => boolean) =>
  surveyReport(edit(station, { type: 'removeCables', ids: station.cables.map((c) => c.id).filter((id) => !keep(id)) }));

describe('readings are the survey’s', () => {
  const report = surveyReport(hut);
  const load = (name: string) => report.budget.loads.find((l) => l.hookup === 'dummy' && l.name === name);
  const supply = report.budget.supplies.find((s) => s.hookup === 'dummy');

  it('in receive with everything plugged in', () => {
    expect(read.get('unit/transmitter/amps')).toBe(supply?.receiveAmps);
    expect(read.get('unit/transmitter/volts')).toBe(load('Transmitter')?.receiveVolts);
  });
  it('in sending', () => {
    expect(read.get('dummy/transmitter/supply.output/amps')).toBe(supply?.sendingAmps);
    expect(read.get('dummy/transmitter/supply.output/volts')).toBe(supply?.sendingVolts);
    expect(read.get('dummy/transmitter/transmitter.draw/volts')).toBe(load('Transmitter')?.sendingVolts);
    expect(read.get('dummy/transmitter/changeover.coil/volts')).toBe(load('Changeover')?.sendingVolts);
    expect(read.get('dummy/transmitter/receiver.draw/volts')).toBe(load('Receiver')?.sendingVolts);
    const rf = report.rf.find((r) => r.hookup === 'dummy')?.stages.find((s) => s.port === 'Meter · transmitter');
    expect(read.get('dummy/transmitter/meter.transmitter/watts')).toBe(rf?.forwardWatts);
    expect(read.get('dummy/transmitter/meter.transmitter/swr')).toBe(rf?.swr);
  });
  it.each([
    ['hut', 'receiver', hut, ['d2', 'r1', 'k3']],
    ['hill table', 'tuner', hill, ['d2', 'r1', 'k1', 'a1', 'a2']],
  ] as const)('%s: the %s at its turn, what comes later unplugged', (_, unit, station, later) => {
    const part = only(station, (id) => !(later as readonly string[]).includes(id));
    const row = part.budget.loads.find((l) => l.unit === unit);
    const steps = readingsOf(station);
    expect(steps.get(`unit/${unit}/volts`)).toBeCloseTo(row?.receiveVolts ?? Number.NaN, 9);
    expect(steps.get(`unit/${unit}/amps`)).toBeCloseTo(part.budget.supplies[0]?.receiveAmps ?? Number.NaN, 9);
  });
  it('hill table, everything in: the last unit', () => {
    const { loads, supplies } = surveyReport(hill).budget;
    const steps = readingsOf(hill);
    expect(steps.get('unit/transceiver/volts')).toBe(loads.find((l) => l.unit === 'transceiver')?.receiveVolts);
    expect(steps.get('unit/transceiver/amps')).toBe(supplies[0]?.receiveAmps);
  });
});

describe('what is wrong with the drawing', () => {
  const wrong = powerUpSheet(draft);
  const step = (id: string) => wrong.parts.flatMap((p) => p.steps).find((s) => s.id === id);
  it('is named first: three dangers and two faults', () => expect(wrong.first).toHaveLength(5));
  it('a swapped plug is not to be plugged in', () => {
    expect(step('unit/receiver/plug')?.expected).toBeNull();
    expect(step('unit/receiver/plug')?.warning).toMatch(/swapped/);
  });
  it('nothing is plugged in or sent after that', () => {
    const last = (id: string) => wrong.parts.find((p) => p.id === id)?.steps.at(-1)?.id;
    expect(last('units')).toBe('unit/receiver/plug');
    expect(step('unit/transmitter/plug')).toBeUndefined();
    expect(wrong.parts.flatMap((p) => p.steps).filter(({ id }) => id.endsWith('/hold'))).toEqual([]);
  });
  it('a station whose mistake lies in what is plugged in ends there, with the mistake as its reason', () => {
    const mistaken = sample('old-and-new');
    const steps = powerUpSheet(mistaken).parts.find((p) => p.id === 'units')?.steps;
    expect(steps?.at(-1)?.id).toMatch(/\/stop$/);
    expect(steps?.at(-1)?.text).toMatch(/^Stop here\. As drawn: .*110 V.* Put that right first/);
    expect(steps?.at(-1)?.expected).toBeNull();
  });
  it('one that its owner has accepted stops nothing', () => {
    const mistaken = sample('old-and-new');
    const known = survey(mistaken).findings.reduce((s, finding) => edit(s, acceptFinding(finding, 'known')), mistaken);
    const ids = powerUpSheet(known).parts.flatMap((p) => p.steps.map((s) => s.id));
    expect(ids).toContain('unit/transceiver/volts');
    expect(ids.filter((id) => id.startsWith('unit/') && id.endsWith('/stop'))).toEqual([]);
  });
  it('its plus on the receiver’s case, which the braids join to minus, is a short', () =>
    expect(step('rail/supply.output')?.warning).toMatch(/short/));
  it('without a hook-up for the dummy load nothing sends', () => {
    expect(step('dummy/none')?.text).toMatch(/No hook-up leads into a dummy load/);
    expect(wrong.parts.some((p) => p.id === 'antenna')).toBe(false);
  });
});

describe('what goes with it', () => {
  const texts = (id: string) => sheet.parts.find((p) => p.id === id)?.steps.map((s) => s.text) ?? [];
  it('spares: a fuse of each rating', () => expect(texts('spares').filter((t) => t.includes('fuse'))).toHaveLength(4));
  it('the storm list: antennas first, then the mains', () => {
    expect(texts('storm')[0]).toMatch(/R7/);
    expect(texts('storm')[1]).toMatch(/Bench supply/);
  });
  it('cautions of the kinds, each once, with the units that they are about', () => {
    expect(sheet.cautions).toContainEqual({ units: 'Bench supply', text: 'Mains inside: leave the case shut.' });
    expect(new Set(sheet.cautions.map(({ text }) => text)).size).toBe(sheet.cautions.length);
    const two = drawStation({ units: { one: 'bench-supply', other: 'bench-supply', tx: 'cw-transmitter-3w' } });
    expect(powerUpSheet(two).cautions).toEqual([
      { units: 'one, other', text: 'Mains inside: leave the case shut.' },
      { units: 'tx', text: 'Transmitting needs a licence.' },
    ]);
  });
  it('computers bring the lines about RF on their leads', () => {
    const station = drawStation({ units: { supply: 'bench-supply', pc: 'computer', tx: 'cw-transmitter-3w' } });
    const eyes = powerUpSheet(station)
      .parts.find((p) => p.id === 'eyes')
      ?.steps.map((s) => s.id);
    expect(eyes).toContain('eyes/ferrites');
    expect(sheet.parts.find((p) => p.id === 'eyes')?.steps.map((s) => s.id)).not.toContain('eyes/ferrites');
  });
  it('nothing to do where nothing gives power', () => expect(powerUpSheet(createStation()).parts).toEqual([]));
});
