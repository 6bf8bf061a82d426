import { describe, expect, it } from 'vitest';
import type { Finding } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import type { Place } from '../../core/station/place.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { sample, sampleReport } from '../stations/samples.ts';

const station = sample('old-and-new');
const report = sampleReport('old-and-new');
const serious = (from: readonly Finding[]) => from.filter((f) => f.severity !== 'note');

// RG-213 between 0.55 and 1.3 dB per 100 ft at 10 and 50 MHz, straight on a log-log scale, at 14.03 MHz.
const dbPerM = (0.55 * (1.3 / 0.55) ** (Math.log(1.403) / Math.log(5))) / 30.48;
const watts = (dbm: number) => 10 ** ((dbm - 30) / 10);
// 50 dBm, 1 m of lead, 10 dB of amplifier, which stays below its 60 dBm.
const made = 50 - dbPerM + 10;
// Leads of 0.6 m, the meter's 0.1 dB, the filter's 0.3, the switch's 0.1, the panel's 0.05; 4 m and 20 m to the dipole.
const atDipole = made - 0.1 - 0.3 - 0.1 - 0.05 - (3 * 0.6 + 24) * dbPerM;

interface Burning {
  what: string;
  rule: string;
  severity: string;
  at: Place;
  /** Figures worked out by hand; decimals within which the finding has to be. */
  values: Record<string, [number, number]>;
}

const burning: Burning[] = [
  {
    // Nothing flows in the open line, so that all of it stands on the contact.
    what: 'the relay line’s 110 V on a contact for 30 V',
    rule: 'keying/line-over-rating',
    severity: 'danger',
    at: { unit: 'transceiver', port: 'amplifier' },
    values: { volts: [110, 3], limit: [30, 6] },
  },
  {
    // The line falls 2 ms after the key and the relay takes 18 ms; RF starts 17 ms after the key.
    what: 'the relay that moves when RF is there',
    rule: 'keying/hot-switched',
    severity: 'danger',
    at: { unit: 'amplifier' },
    values: { time: [2 + 18 - 17, 6], watts: [watts(made), 0] },
  },
  {
    what: 'the meter for 200 W',
    rule: 'rf/load-overpowered',
    severity: 'danger',
    at: { unit: 'meter', port: 'transmitter' },
    values: { watts: [watts(made - 0.6 * dbPerM), 0], limit: [200, 6] },
  },
  {
    // The amplifier's second harmonic is 40 dB below what it makes; at 28.06 MHz the filter lets it through, and the
    // coax takes 2 ** 0.5345 times what it takes at 14.03 (the exponent is ln (1.3 / 0.55) / ln 5).
    what: 'the second harmonic',
    rule: 'rf/harmonics',
    severity: 'doubt',
    at: { unit: 'dipole' },
    values: { level: [atDipole - 40 - 25.8 * dbPerM * (2 ** 0.5345 - 1), 1] },
  },
];

describe('old and new', () => {
  it.each(burning)('$what', ({ rule, severity, at, values }) => {
    const finding = report.findings.find((f) => f.rule === rule);
    expect(finding?.at[0]).toEqual(at);
    expect(finding?.severity).toBe(severity);
    expect(finding?.causedBy).toBeUndefined();
    for (const [name, [wanted, decimals]] of Object.entries(values))
      expect(Number(finding?.values[name]), name).toBeCloseTo(wanted, decimals);
  });

  it('has nothing else above a note', () => {
    expect(serious(report.findings).map((f) => f.rule)).toHaveLength(burning.length);
  });

  it('a contact for 200 V and a meter for 2 kW leave the slow relay and its harmonic', () => {
    const own = (from: Station, id: string, overrides: Record<string, number>) =>
      edit(from, { type: 'updateUnit', id, set: { overrides } });
    const contact = own(station, 'transceiver', { 'output.maxDbm': 50, 'amplifier-contact.maxVolts': 200 });
    const both = own(contact, 'meter', { 'line.maxWatts': 2000, 'line.scaleWatts': 2000 });
    expect(serious(survey(both).findings).map((f) => f.rule)).toEqual(['keying/hot-switched', 'rf/harmonics']);
  });
});

describe('key-down of old and new', () => {
  // A dit at 18 words a minute.
  const dit = 1200 / 18;
  it.each([
    ['dummy', 'Straight key', 0],
    // The keyer takes 1 ms either way.
    ['air', 'Paddle', 1],
  ])('%s: RF starts before the amplifier’s relay is over, and ends before it is back', (hookup, control, late) => {
    const keydown = report.keydowns.find((k) => k.hookup === hookup && k.controlName === control);
    const span = (name: string) => keydown?.lanes.find((l) => l.name === name)?.spans;
    const close = (from: number, to: number) => [[expect.closeTo(from, 6), expect.closeTo(to, 6)]];
    expect(span('Transceiver amplifier key')).toEqual(close(late + 2, dit + late + 10));
    expect(span('Transceiver RF')).toEqual(close(late + 17, dit + late + 4));
    expect(span('Valve amplifier relay')).toEqual(close(late + 2 + 18, dit + late + 10 + 12));
  });
});

it('takes 22 A for sending, and 1.5 A in receive', () => {
  const supply = report.budget.supplies.find((s) => s.hookup === 'dummy' && s.name === 'Supply');
  expect(supply?.receiveAmps).toBeCloseTo(1.5, 6);
  // The straight key lies on the dot's 5 V through 10 kΩ.
  expect(supply?.sendingAmps).toBeCloseTo(22 + 5 / 10_000, 4);
});
