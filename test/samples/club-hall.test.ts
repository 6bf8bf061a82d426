import { describe, expect, it } from 'vitest';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import type { KeydownReport } from '../../core/reports/report-rows.ts';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { edit } from '../../core/station/edit.ts';
import { sample, sampleReport } from '../stations/samples.ts';

// The club hall worked out by hand. Inputs are the catalogue's and the drawing's own figures.
const station = sample('club-hall');
const report = sampleReport('club-hall');
const hookups = ['beam', 'dipole', 'dummy'];

it('is of the size that the drawing has to cope with', () => {
  expect(station.units.length).toBeGreaterThanOrEqual(60);
  expect(station.cables.length).toBeGreaterThanOrEqual(75);
});

it('has nothing above a note to say of the club hall', () => {
  expect(report.findings.filter((f) => f.severity !== 'note').map((f) => f.message)).toEqual([]);
});

describe('currents of the club hall', () => {
  const supply = (name: string, hookup: string) =>
    report.budget.supplies.find((s) => s.name === name && s.hookup === hookup);
  // Transmitter 0.5, receiver 0.085, changeover 0.08, SDR 0.4; the hub takes 0.5 W by itself, at close to 13.77 V.
  const idle = 0.5 + 0.085 + 0.08 + 0.4 + 0.5 / 13.77;
  // 19 A instead of 0.5; and what flows in lines that are pulled: the transmitter's key 5 V through 4.7 kΩ, changeover
  // 4.7 kΩ and mute 10 kΩ, these two behind some 0.6 V of the splitter's diodes.
  const sending = idle + 18.5 + 5 / 4700 + 4.4 / 4700 + 4.4 / 10_000;
  it.each(hookups)('%s: each position takes 1.101 A in receive, the one that sends 19.60 A', (hookup) => {
    expect(supply('Run supply', hookup)?.receiveAmps).toBeCloseTo(idle, 3);
    expect(supply('Search supply', hookup)?.receiveAmps).toBeCloseTo(idle, 3);
    expect(supply('Run supply', hookup)?.sendingAmps).toBeCloseTo(sending, 2);
    // 25 A for as long as one likes.
    expect(supply('Run supply', hookup)?.marginAmps).toBeCloseTo(25 - sending, 2);
  });
  it.each(hookups)('%s: the shared shelf takes 0.140 A, and 0.181 A while one sends', (hookup) => {
    // Interlock 20 mA and loop 120 mA; the interlock's relay makes it 60 mA, its line 5 V through 4.7 kΩ.
    expect(supply('Shared supply', hookup)?.receiveAmps).toBeCloseTo(0.02 + 0.12, 4);
    expect(supply('Shared supply', hookup)?.sendingAmps).toBeCloseTo(0.06 + 0.12 + 5 / 4700, 4);
  });
});

const keydown = (hookup: string, control: string, reports: readonly KeydownReport[] = report.keydowns) => {
  const found = reports.find((k) => k.hookup === hookup && k.controlName === control);
  return { ...Object.fromEntries(found?.lanes.map((l) => [l.name, l.spans]) ?? []), settled: found?.settled };
};

// Paddle from 0 to 60 (a dit at 20 WPM is 1200/20 ms). Keyer 1 ms. Interlock over after 2 ms for position 1 and 4 ms for
// position 2, back after 1 ms. The transmitter's mute contact follows 1 ms later and opens 10 ms after the key, its RF
// starts 12 ms after the key and ends 4 ms after it. By the mute contact the changeover is over in 0.05 ms, the receiver
// is mute in 2 ms and open 30 ms after it.
const position = (who: string, n: number, over: number) => ({
  [`${who} paddle paddle`]: [[0, 60]],
  [`${who} keyer keying`]: [[1, 60 + 1]],
  [`Interlock position ${n}`]: [[1 + over, 61 + 1]],
  [`${who} transmitter mute`]: [[1 + over + 1, 62 + 10]],
  [`${who} changeover over`]: [[1 + over + 1.05, 72.05]],
  [`${who} receiver mute`]: [[1 + over + 1 + 2, 72 + 30]],
  [`${who} transmitter RF`]: [[1 + over + 12, 62 + 4]],
});

describe.each(hookups)('key-down of the club hall, %s', (hookup) => {
  it.each([
    ['Run', 1, 2],
    ['Search', 2, 4],
  ] as const)('%s position to the millisecond', (who, n, over) => {
    expect(keydown(hookup, `${who} paddle`)).toEqual({ ...position(who, n, over), settled: true });
  });
  it('lets position 1 send, and it alone, when both paddles are pressed at once', () => {
    // Position 2 is let through after 4 ms, and position 1 has cut it off after 2.
    expect(keydown(hookup, 'All controls')).toEqual({
      ...position('Run', 1, 2),
      'Search paddle paddle': [[0, 60]],
      'Search keyer keying': [[1, 61]],
      'Rotator controller turning': [[0, 60]],
      settled: true,
    });
  });
});

it('without the interlock both positions would send at once', () => {
  const around = station.cables.filter((c) => [c.a.unit, c.b.unit].includes('interlock') && c.number.startsWith('K'));
  const bare = ['run', 'search'].reduce(
    (s, p) => edit(s, layCable(s, { unit: `${p}-keyer`, port: 'out' }, { unit: `${p}-transmitter`, port: 'key' })),
    edit(station, { type: 'removeCables', ids: around.map((c) => c.id) }),
  );
  // Keyer 1 ms, transmitter 12 ms; let go at 60: keyer 1 ms, transmitter 4 ms.
  expect(keydown('beam', 'All controls', surveyReport(bare).keydowns)).toMatchObject({
    'Run transmitter RF': [[13, 65]],
    'Search transmitter RF': [[13, 65]],
  });
});

describe('RF of the club hall', () => {
  // Coax between the points of its data sheet, straight on a log-log scale: RG-58 1.5 and 3.7 dB per 100 ft at 10 and
  // 50 MHz, RG-213 0.55 and 1.3; 14.04 MHz is a share of ln 1.404 / ln 5 of the way.
  const way = Math.log(1.404) / Math.log(5);
  const perM = (low: number, high: number) => (low * (high / low) ** way) / 30.48;
  // RG-58 at the desk: four leads of 0.6 m and one of 1 m. Changeover 0.3, low-pass 0.3, meter 0.1, band-pass 0.6,
  // selector, antenna switch, choke and arrestor 0.1 each. RG-213: 4 m, 0.5 m, 1 m and what goes to the antenna.
  const desk = 3.4 * perM(1.5, 3.7) + 0.3 + 0.3 + 0.1 + 0.6 + 4 * 0.1;
  const wattsAt = (metres: number) => 10 ** (2 - (desk + (5.5 + metres) * perM(0.55, 1.3)) / 10);
  /** What an antenna of this SWR takes of the power that comes to it. */
  const taken = (swr: number) => 1 - ((swr - 1) / (swr + 1)) ** 2;
  it.each([
    // 62 + j5 Ω: an SWR of 1.26.
    ['beam', 'beam', wattsAt(30) * taken(1.4)],
    ['beam', 'dipole', wattsAt(25) * taken(1.26)],
    ['dipole', 'dipole', wattsAt(25) * taken(1.26)],
  ])(
    '%s: the %s takes on average 0.16 of its power in sending: 0.4 key down, 0.4 of the time',
    (hookup, antenna, watts) => {
      const exposure = report.findings.find(
        (f) => f.rule === 'rf/rf-exposure' && f.at[0] && 'unit' in f.at[0] && f.at[0].unit === antenna,
      );
      expect(exposure?.hookups).toContain(hookup);
      expect(Number(exposure?.values.watts) / (0.16 * watts)).toBeCloseTo(1, 2);
    },
  );
});
