import { describe, expect, it } from 'vitest';
import { sampleReport } from '../stations/samples.ts';
import { d1, fuse1, fuse2, fuse3, holder, lead, returns } from './hut-by-hand.ts';

// The hut worked out by hand; the steps are written out.
const report = sampleReport('hut');

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
