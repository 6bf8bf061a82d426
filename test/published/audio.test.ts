import { describe, expect, it } from 'vitest';
import { type Circuit, emptyCircuit } from '../../core/circuit/circuit.ts';
import { solveAudioInTurn } from '../../core/dc/solve-audio-in-turn.ts';
import { dbuFromVolts } from '../../core/quantity/dbu-from-volts.ts';
import { checkRows, type Row } from './rows.ts';

const glossary = 'audio glossary and table 5 of an acoustics manual: line levels';
const inDb = (ratio: number): number => 20 * Math.log10(ratio);

checkRows('line levels', [
  // -10 dBV, the consumer's level.
  { name: '0.3162 V, dBu', given: dbuFromVolts(0.3162), printed: '-7.78', source: glossary },
  // Printed 1.2276 and 1.2277; √0.6 × 10^0.2 is 1.22766.
  { name: '1.2277 V, dBu', given: dbuFromVolts(1.2277), printed: '4.00', tolerance: 1e-3, source: glossary },
  {
    name: 'one over the other, dB',
    given: dbuFromVolts(1.2277) - dbuFromVolts(0.3162),
    printed: '11.78',
    tolerance: 0.0101,
    source: glossary,
  },
  { name: '0.7746 V, dBu', given: dbuFromVolts(0.7746), printed: '0.00', source: 'calculation: √(1 mW × 600 Ω)' },
  { name: '1 V, dBu', given: dbuFromVolts(1), printed: '2.218', source: 'calculation: -20 log √0.6' },
  { name: '1.228 V, dBu', given: dbuFromVolts(1.228), printed: '4.00', source: glossary },
  {
    name: 'a microphone’s 0.775 mV, dBu',
    given: dbuFromVolts(0.000775),
    printed: '-60.0',
    source: 'calculation: 0.7746 V / 1000',
  },
  {
    name: 'a microphone’s 61.5 mV, dBu',
    given: dbuFromVolts(0.0615),
    printed: '-22.0',
    source: 'calculation: 0.7746 V × 10^(-1.1)',
  },
]);

/** What an output of some volts behind its ohms makes at one input, as the program works it out. */
function voltsInto(volts: number, sourceOhms: number, loadOhms: number): number {
  const end = { node: 1, reference: 0, gate: [] };
  const circuit = {
    ...emptyCircuit,
    nodes: ['ground', 'line'],
    signals: {
      sources: [
        { ...end, unit: 'a', spec: { id: 'out', type: 'audioSource', contact: 'out.tip', volts, ohms: sourceOhms } },
      ],
      loads: [{ ...end, unit: 'b', spec: { id: 'in', type: 'audioLoad', contact: 'in.tip', ohms: loadOhms } }],
      data: [],
    },
  } as const satisfies Circuit;
  return solveAudioInTurn(circuit, [new Uint8Array(0)])[0]?.levels[0]?.volts ?? Number.NaN;
}

const divided = (sourceOhms: number, loadOhms: number, printed: string): Row => ({
  name: `1 V from ${sourceOhms} Ω into ${loadOhms} Ω, V`,
  given: voltsInto(1, sourceOhms, loadOhms),
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
    given: inDb(voltsInto(1, 600, 600)),
    printed: '-6.02',
    source: 'calculation: 20 log 0.5',
  },
]);

describe('at the edges', () => {
  it('no volts are no level', () => expect(dbuFromVolts(0)).toBe(Number.NEGATIVE_INFINITY));
});
