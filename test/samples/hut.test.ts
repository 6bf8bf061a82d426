import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { sample } from '../stations/samples.ts';
import { solveReturns } from './hand-network.ts';

// The hut worked out by hand. Inputs are the catalogue's and the drawing's own figures; the steps are written out.
const report = surveyReport(sample('hut'));

/** AWG 20 and AWG 14 at 20 °C, ohms per metre: NBS Handbook 100, 10.15 and 2.525 Ω per 1000 ft. */
const awg20 = 10.15 / 304.8;
const awg14 = 2.525 / 304.8;
const ring = 0.002; // ring terminal under a binding post
const stud = 0.0002; // ring terminal on the strip's stud
const pole = 0.0009; // two-pole contact
const barrel = 0.03;
const way = 0.0005; // the strip's minus rail, to one outlet
const holder = 0.002; // the strip's fuse holder
const chassis = 0.005; // a contact's screw to its box
const [fuse1, fuse2, fuse3] = [0.123, 0.053, 0.0311]; // blade fuses of 1, 2 and 3 A, cold

/** One core of D1, of D2 and D3 (0.8 m), of D4 (1 m), joints included. */
const d1 = ring + 0.8 * awg14 + stud;
const lead = (metres: number) => pole + metres * awg20 + barrel;

/** Coax braid 14 mΩ/m and key-lead screen 50 mΩ/m, 0.6 m each, with their joints and the screws to both boxes. */
const r1 = 2 * chassis + 0.6 * 0.014 + 0.002 + 0.002; // BNC to BNC
const r3 = 2 * chassis + 0.6 * 0.014 + 0.002 + 0.01; // BNC to phono
const k3 = 2 * chassis + 0.6 * 0.05 + 0.02 + 0.02; // 3.5 mm to 3.5 mm
const k4 = 2 * chassis + 0.6 * 0.05 + 0.01 + 0.01; // phono to phono

/** Volts above the strip's minus bar at each load's own minus contact: the three boxes share their returns by braids. */
function returns(tx: number, over: number, rx: number) {
  return solveReturns({ tx, over, rx }, [
    ['tx', 'bar', lead(0.8) + way],
    ['over', 'bar', lead(0.8) + way],
    ['rx', 'bar', lead(1) + way],
    ['tx', 'txBox', chassis],
    ['over', 'overBox', chassis],
    ['rx', 'rxBox', chassis],
    ['txBox', 'overBox', r1],
    ['txBox', 'overBox', k3],
    ['overBox', 'rxBox', r3],
    ['overBox', 'rxBox', k4],
  ]);
}

/** What a load gets: 13.8 V less the supply and D1 with all the current, the fuse and plus core with its own, the return. */
function loadVolts(all: number, own: number, fuse: number, metres: number, back: number): number {
  return 13.8 - all * (0.05 + 2 * d1) - own * (fuse + holder + lead(metres)) - back;
}

describe('currents of the hut', () => {
  it.each(['dummy', 'air'])('%s: 0.120 A in receive, 0.7636 A sending', (hookup) => {
    const supply = report.budget.supplies.find((s) => s.hookup === hookup);
    // Transmitter idle 35 mA and receiver 85 mA; nothing flows in the open key, mute and changeover lines.
    expect(supply?.receiveAmps).toBeCloseTo(0.035 + 0.085, 6);
    // Sending 620 mA, receiver 85 mA, coil 45 mA; and what the pull-ups push into closed lines: the changeover's line
    // 12 V through 1 kΩ and the keyer's transistor (1.5 Ω), the key 5 V through 4.7 kΩ, the mute 5 V through 10 kΩ.
    const lines = 12 / (1000 + 1.5) + 5 / 4700 + 5 / 10_000;
    const sending = 0.62 + 0.085 + 0.045 + lines;
    expect(Math.abs((supply?.sendingAmps ?? 0) / sending - 1)).toBeLessThan(0.001);
    // A quarter of the 3 A; the average by 40 % key down in a third of the time.
    expect((supply?.sendingAmps ?? 0) / 3).toBeCloseTo(0.25, 1);
    expect(supply?.averageAmps).toBeCloseTo(0.12 + (0.4 / 3) * (sending - 0.12), 4);
    expect(supply?.marginAmps).toBeCloseTo(3 - sending, 3);
  });
});

describe('volts at every load of the hut, by hand to 0.1 %', () => {
  const receive = returns(0.035, 0, 0.085);
  const sending = returns(0.62, 0.045, 0.085);
  const rows: [name: string, when: 'receiveVolts' | 'sendingVolts', byHand: number][] = [
    ['Transmitter', 'receiveVolts', loadVolts(0.12, 0.035, fuse3, 0.8, receive.tx)],
    ['Changeover', 'receiveVolts', loadVolts(0.12, 0, fuse2, 0.8, receive.over)],
    ['Receiver', 'receiveVolts', loadVolts(0.12, 0.085, fuse1, 1, receive.rx)],
    ['Transmitter', 'sendingVolts', loadVolts(0.7636, 0.62, fuse3, 0.8, sending.tx)],
    ['Changeover', 'sendingVolts', loadVolts(0.7636, 0.057, fuse2, 0.8, sending.over)],
    ['Receiver', 'sendingVolts', loadVolts(0.7636, 0.0855, fuse1, 1, sending.rx)],
  ];
  it.each(rows)('%s, %s', (name, when, byHand) => {
    const loads = report.budget.loads.filter((l) => l.name === name);
    expect(loads).toHaveLength(2);
    for (const load of loads) expect(Math.abs(load[when] / byHand - 1)).toBeLessThan(0.001);
  });
});

describe('key-down of the hut', () => {
  // Paddle at 0. Keyer 1 ms. The line falls: relay and mute contact 6 ms later, key contact 10 ms later. The receiver
  // mutes 2 ms after the contact, RF starts 3 ms after the key contact. Let go at 80 (a dit at 15 WPM is 1200/15 ms):
  // keyer 1 ms, key contact at once, RF 2 ms after it, relay 4 ms after the line, receiver open 30 ms after the relay.
  const times: Record<string, [number, number]> = {
    Paddle: [0, 80],
    'Keyer keying': [1, 81],
    'Changeover coil': [1, 81],
    'Changeover relay': [1 + 6, 81 + 4],
    'Changeover key out': [1 + 10, 81],
    'Receiver mute': [7 + 2, 85 + 30],
    'Transmitter RF': [11 + 3, 81 + 2],
  };
  it.each(report.keydowns.map((k) => [k.hookupName, k] as const))('%s, to the millisecond', (_, keydown) => {
    expect(Object.fromEntries(keydown.lanes.map((l) => [l.name, l.spans]))).toEqual(
      Object.fromEntries(Object.entries(times).map(([name, span]) => [name, [span]])),
    );
    expect(keydown.settled).toBe(true);
    expect([keydown.rf?.fromMs, keydown.rf?.toMs]).toEqual([14, 83]);
  });
  it('makes 3 W: 34.8 dBm', () => expect(report.keydowns[0]?.rf?.watts).toBeCloseTo(10 ** 0.48, 3));
});

it('has nothing above a note to say of the hut', () => {
  expect(report.findings.filter((f) => f.severity !== 'note').map((f) => f.message)).toEqual([]);
});
