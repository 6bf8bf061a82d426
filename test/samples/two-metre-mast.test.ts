import { describe, expect, it } from 'vitest';
import { sampleReport } from '../stations/samples.ts';

// The mast worked out by hand. Inputs are the catalogue's and the drawing's own figures.
const report = sampleReport('two-metre-mast');
const hookups = ['dummy', 'air'];

it('has nothing above a note to say of the mast', () => {
  expect(report.findings.filter((f) => f.severity !== 'note').map((f) => f.message)).toEqual([]);
});

describe.each(hookups)('currents of the mast, %s', (hookup) => {
  const supply = (name: string) => report.budget.supplies.find((s) => s.name === name && s.hookup === hookup);
  it('desk: 1.70 A in receive, 7.01 A sending', () => {
    // Exciter 1.2, transverter 0.3, sequencer 0.05, and through it the preamplifier's 0.15.
    expect(supply('Desk supply')?.receiveAmps).toBeCloseTo(1.2 + 0.3 + 0.05 + 0.15, 4);
    // Exciter 2, transverter 4.5, sequencer 0.15. The coils, 75 Ω at close to 13.5 V: the mast's behind 15 m of 0.14 mm²
    // at 0.13 Ω/m and its screen at 0.05 Ω/m. Lines: PTT and key 5 V through 4.7 kΩ, the transverter's 12 V through
    // 4.7 kΩ behind 0.6 V of a diode.
    const coils = 13.5 / 75 + 13.5 / (75 + 15 * (0.13 + 0.05));
    const lines = 2 * (5 / 4700) + 11.4 / 4700;
    expect(supply('Desk supply')?.sendingAmps).toBeCloseTo(2 + 4.5 + 0.15 + coils + lines, 2);
  });
  it('amplifier: 0.2 A in receive, 22 A and its key line sending', () => {
    expect(supply('Amplifier supply')?.receiveAmps).toBeCloseTo(0.2, 4);
    // 12 V through 1.5 kΩ behind 0.6 V of a diode.
    expect(supply('Amplifier supply')?.sendingAmps).toBeCloseTo(22 + 11.4 / 1500, 3);
  });
});

describe('key-down of the mast', () => {
  // Footswitch at 0. Steps at 0, 30, 60 and 90 ms. The preamplifier falls out 8 ms after the first; the coax relays take
  // 20 ms and bounce for 2; amplifier and transverter go over 12 ms after the third; RF starts 5 ms after the fourth. It
  // is held until all that is done, at 95. Going back: step 4 at once and RF 4 ms later, step 3 after 30 ms (amplifier
  // 8 ms, transverter 10 ms), step 2 after 60 (relays 12 ms), step 1 after 90 (preamplifier 15 ms).
  const letGo = 90 + 5;
  const times: Record<string, [number, number]> = {
    'Footswitch foot': [0, letGo],
    'Sequencer step 1, preamplifier off': [0, letGo + 90],
    'Sequencer step 2, antenna relays': [30, letGo + 60],
    'Desk relay relay': [30 + 20, letGo + 60 + 12],
    'Mast relay relay': [30 + 20, letGo + 60 + 12],
    'Sequencer step 3, amplifier': [60, letGo + 30],
    'Amplifier relay': [60 + 12, letGo + 30 + 8],
    'Transverter relay': [60 + 12, letGo + 30 + 10],
    'Sequencer step 4, exciter': [90, letGo],
    'Exciter RF': [90 + 5, letGo + 4],
  };
  it.each(report.keydowns.map((k) => [k.hookupName, k] as const))('%s, to the millisecond', (_, keydown) => {
    const spans = Object.fromEntries(keydown.lanes.map((l) => [l.name, l.spans]));
    for (const [name, span] of Object.entries(times)) expect(spans[name], name).toEqual([span]);
    // It is in line until 8 ms and again from 15 ms after its 12 V are back.
    expect(spans['Preamplifier amplifier in line']).toEqual([
      [0, 8],
      [letGo + 90 + 15, letGo + 90 + 15],
    ]);
    expect(keydown.settled).toBe(true);
  });
});

describe('RF of the mast', () => {
  // Coax between 100 and 200 MHz of its data sheet, straight on a log-log scale: RG-58 5.4 and 8.1 dB per 100 ft, RG-213
  // 1.9 and 2.7; 144.3 MHz is a share of log2 1.443 of the way.
  const way = Math.log2(144.3 / 100);
  const perM = (low: number, high: number) => (low * (high / low) ** way) / 30.48;
  // The transverter gives the 40 dBm that it is turned down to: 10 dBm and 34 dB would be more. Two leads of 0.5 m and
  // the desk relay's 0.1 dB bring 9.3 W to the amplifier, and 11.8 dB stay below its 51.8 dBm.
  const amplified = 40 - 2 * 0.5 * perM(5.4, 8.1) - 0.1 + 11.8;
  // Lead 0.5 m, low-pass 0.3, lead 1 m, arrestor 0.1, 12 m up the mast, relay 0.1, 1 m to the yagi.
  const arriving = 10 ** ((amplified - 30 - 0.5 - 14.5 * perM(1.9, 2.7)) / 10);
  it('makes 141 W and brings 98 W to the yagi, 6 % of that on average', () => {
    expect(10 ** ((amplified - 30) / 10)).toBeCloseTo(141, 0);
    expect(arriving).toBeCloseTo(98, 0);
    const exposure = report.findings.find((f) => f.rule === 'rf/rf-exposure');
    // An SWR of 1.3 sends (0.3 / 2.3)² of it back; 0.2 of the time RF while sending, 0.3 of the time sending.
    expect(Number(exposure?.values.watts) / (0.06 * arriving * (1 - (0.3 / 2.3) ** 2))).toBeCloseTo(1, 2);
  });
});
