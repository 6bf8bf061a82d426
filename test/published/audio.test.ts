import { describe, expect, it } from 'vitest';
import * as audio from '../../core/quantity/audio.ts';
import { checkRows, type Row } from './rows.ts';

const glossary = 'audio glossary and table 5 of an acoustics manual: line levels';
const inDb = (ratio: number): number => 20 * Math.log10(ratio);

const consumer = audio.voltsFromDbv(-10);
const professional = audio.voltsFromDbu(4);

checkRows('line levels', [
  { name: '-10 dBV, V', given: consumer, printed: '0.3162', source: glossary },
  // Printed 1.2276 and 1.2277; √0.6 × 10^0.2 is 1.22766.
  { name: '+4 dBu, V', given: professional, printed: '1.2277', tolerance: 1e-3, source: glossary },
  {
    name: 'one over the other, dB',
    given: inDb(professional / consumer),
    printed: '11.78',
    tolerance: 0.0101,
    source: glossary,
  },
  { name: '0 dBu, V', given: audio.voltsFromDbu(0), printed: '0.7746', source: 'calculation: √(1 mW × 600 Ω)' },
  { name: '0 dBV, V', given: audio.voltsFromDbv(0), printed: '1.0000', source: 'definition of dBV' },
  { name: '1 V, dBu', given: audio.dbuFromVolts(1), printed: '2.218', source: 'calculation: -20 log √0.6' },
  { name: '1.228 V, dBu', given: audio.dbuFromVolts(1.228), printed: '4.00', source: glossary },
  { name: '0.316 V, dBV', given: audio.dbvFromVolts(0.316), printed: '-10.0', source: glossary },
  {
    name: 'a microphone’s -60 dBu, mV',
    given: 1000 * audio.voltsFromDbu(-60),
    printed: '0.775',
    source: 'calculation: 0.7746 V / 1000',
  },
  {
    name: 'a microphone’s -22 dBu, mV',
    given: 1000 * audio.voltsFromDbu(-22),
    printed: '61.5',
    source: 'calculation: 0.7746 V × 10^(-1.1)',
  },
]);

checkRows('volts and watts', [
  { name: '1 W in 8 Ω, V', given: audio.voltsFromWatts(1, 8), printed: '2.828', source: 'calculation: √(P R)' },
  { name: '1 W in 8 Ω, A', given: audio.voltsFromWatts(1, 8) / 8, printed: '0.354', source: 'calculation: √(P / R)' },
  { name: '1 W in 4 Ω, V', given: audio.voltsFromWatts(1, 4), printed: '2.000', source: 'calculation: √(P R)' },
  { name: '1 mW in 600 Ω, V', given: audio.voltsFromWatts(1e-3, 600), printed: '0.7746', source: 'definition of dBu' },
  {
    name: '1 V in 32 Ω, mW',
    given: 1000 * audio.wattsFromVolts(1, 32),
    printed: '31.25',
    source: 'calculation: V² / R',
  },
]);

const divided = (sourceOhms: number, loadOhms: number, printed: string): Row => ({
  name: `1 V from ${sourceOhms} Ω into ${loadOhms} Ω, V`,
  given: audio.dividedVolts(1, sourceOhms, loadOhms),
  printed,
  source: `calculation: ${loadOhms} / (${sourceOhms} + ${loadOhms})`,
});
checkRows('source and load', [
  divided(600, 600, '0.5000'),
  divided(1000, 10_000, '0.9091'),
  divided(100, 10_000, '0.9901'),
  divided(100, 32, '0.2424'),
  divided(10, 8, '0.4444'),
  divided(2200, 47_000, '0.9553'),
  {
    name: '600 Ω into 600 Ω, dB',
    given: inDb(audio.dividedVolts(1, 600, 600)),
    printed: '-6.02',
    source: 'calculation: 20 log 0.5',
  },
]);

describe('at the edges', () => {
  it('an open load gets all, a short none', () => {
    expect(audio.dividedVolts(0.3, 600, Number.POSITIVE_INFINITY)).toBe(0.3);
    expect(audio.dividedVolts(0.3, 600, 0)).toBe(0);
    expect(audio.dividedVolts(0.3, 0, 0)).toBe(0);
  });
  it('no volts are no level', () => {
    expect(audio.dbvFromVolts(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(audio.dbuFromVolts(0)).toBe(Number.NEGATIVE_INFINITY);
  });
});
