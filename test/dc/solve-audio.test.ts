import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { solveAudioInTurn } from '../../core/dc/solve-audio-in-turn.ts';
import { surveyReport } from '../../core/reports/survey-report.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import type { UnitElement } from '../../core/station/schema/unit-kind.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

const out = (elements: UnitElement[]) => ({ made: made({ out: ['audio', 'stereo-35-jack'] }, elements) });
const into = (elements: UnitElement[]) => ({ made: made({ in: ['audio', 'stereo-35-jack'] }, elements) });
const source = (set: object = {}, id = 'signal'): UnitElement => ({
  id,
  type: 'audioSource',
  contact: 'out.tip',
  volts: 1,
  ohms: 600,
  ...set,
});
const sink = (set: object = {}, id = 'input'): UnitElement => ({
  id,
  type: 'audioLoad',
  contact: 'in.tip',
  ohms: 600,
  ...set,
});

/** `source element > load element` in volts, with every actor off. */
function volts(station: Station): Record<string, number> {
  const circuit = buildCircuit(station);
  const [atRest] = solveAudioInTurn(circuit, [new Uint8Array(circuit.actors.length)]);
  return Object.fromEntries(
    (atRest?.levels ?? []).map(({ source: s, load, volts: v }) => {
      const [from, to] = [circuit.signals.sources[s], circuit.signals.loads[load]];
      return [`${from?.unit}.${from?.spec.id} > ${to?.unit}.${to?.spec.id}`, v];
    }),
  );
}

// Leads and contacts are some hundredths of an ohm: four digits hold.
describe('levels through impedances', () => {
  it('1 V behind 600 ohms into 600 ohms is half a volt', () => {
    const station = drawStation({ units: { a: out([source()]), b: into([sink()]) }, cables: ['a.out > b.in'] });
    expect(volts(station)['a.signal > b.input']).toBeCloseTo(0.5, 3);
  });
  it('1 V behind 10 ohms into 32 ohms: 32/42', () => {
    const station = drawStation({
      units: { a: out([source({ ohms: 10 })]), b: into([sink({ ohms: 32 })]) },
      cables: ['a.out > b.in'],
    });
    expect(volts(station)['a.signal > b.input']).toBeCloseTo(32 / 42, 2);
  });
  it('a pad of 9 kΩ and 1 kΩ: a tenth of what comes, the 10 kΩ input across the 1 kΩ', () => {
    const pad = made({ in: ['audio', 'stereo-35-jack'], out: ['audio', 'stereo-35-jack'] }, [
      { id: 'series', type: 'conductor', from: 'in.tip', to: 'out.tip', ohms: 9000 },
      { id: 'shunt', type: 'conductor', from: 'out.tip', to: 'out.sleeve', ohms: 1000 },
    ]);
    const station = drawStation({
      units: { a: out([source({ ohms: 0 })]), pad: { made: pad }, b: into([sink({ ohms: 10_000 })]) },
      cables: ['a.out > pad.in', 'pad.out > b.in'],
    });
    const across = (1000 * 10_000) / 11_000;
    expect(volts(station)['a.signal > b.input']).toBeCloseTo(across / (9000 + across), 5);
  });
  it('two inputs on one output share it', () => {
    const both = made({ in: ['audio', 'stereo-35-jack'] }, [sink(), sink({}, 'monitor')]);
    const station = drawStation({ units: { a: out([source()]), b: { made: both } }, cables: ['a.out > b.in'] });
    expect(volts(station)['a.signal > b.input']).toBeCloseTo(300 / 900, 3);
  });
  it('a mono plug in a stereo jack shorts the ring', () => {
    const right = source({ contact: 'out.ring' }, 'right');
    const rightIn = sink({ contact: 'in.ring' }, 'right-in');
    const station = drawStation({
      units: { a: out([source(), right]), b: into([sink(), rightIn]) },
      cables: [['a.out > b.in', { kind: 'audio-lead', plugs: { a: 'mono-35-plug', b: 'mono-35-plug' } }]],
    });
    const found = volts(station);
    expect(found['a.signal > b.input']).toBeCloseTo(0.5, 3);
    expect(found['a.right > b.right-in'] ?? 0).toBeLessThan(1e-3);
  });
  it('an output that follows an input gives what comes there times its gain, up to its most', () => {
    const amplifier = (gainDb: number) =>
      made({ in: ['audio', 'stereo-35-jack'], out: ['audio', 'stereo-35-jack'] }, [
        sink({ ohms: 1e6 }),
        source({ volts: 2, ohms: 0, follows: { load: 'input', gainDb } }, 'amplified'),
      ]);
    const station = (gainDb: number) =>
      drawStation({
        units: { a: out([source({ volts: 0.1 })]), amp: { made: amplifier(gainDb) }, b: into([sink({ ohms: 1e6 })]) },
        cables: ['a.out > amp.in', 'amp.out > b.in'],
      });
    expect(volts(station(20))['amp.amplified > b.input']).toBeCloseTo(1, 2);
    expect(volts(station(40))['amp.amplified > b.input']).toBeCloseTo(2, 3);
  });
  it('an isolated input hears nothing while the sleeve is open', () => {
    const phones = made({ in: ['audio', 'stereo-35-jack'] }, [sink()], { isolated: 'all' });
    const station = drawStation({
      units: { a: out([source()]), b: { made: phones } },
      cables: [['a.out > b.in', { wiring: [{ a: 'tip', b: 'tip' }] }]],
    });
    expect(volts(station)['a.signal > b.input'] ?? 0).toBeLessThan(1e-6);
  });
});

describe('microphone bias', () => {
  // 2.2 kΩ from 3 V into a capsule of 4 kΩ for DC: 3 × 4000 / 6200 = 1.935 V, 0.484 mA (an electret capsule takes some 0.5 mA).
  it('stands on the capsule as the divider of its resistances says', () => {
    const station = drawStation({
      units: {
        capsule: out([source({ volts: 0.02, ohms: 2200, dcOhms: 4000 })]),
        input: into([sink({ ohms: 5000 }), { id: 'bias', type: 'pullUp', contact: 'in.tip', volts: 3, ohms: 2200 }]),
      },
      cables: ['capsule.out > input.in'],
    });
    const [row] = surveyReport(station).audio;
    expect(row?.dcVolts).toBeCloseTo((3 * 4000) / 6200, 3);
    // For the signal the bias resistor lies beside the input.
    const beside = (5000 * 2200) / 7200;
    expect(row?.volts).toBeCloseTo((0.02 * beside) / (beside + 2200), 5);
  });
});
