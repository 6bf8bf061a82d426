import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { DcSolver } from '../../core/dc/dc-solver.ts';
import { made } from '../rules/made.ts';
import { drawStation } from '../stations/draw.ts';

/** 10 V behind 1 kΩ on one port of a unit; 1 MΩ across the other: volts on both. */
function fed(kind: string, from: string, to: string | null, connector: string): [number, number] {
  const source = made({ out: ['rf', connector] }, [
    { id: 'bias', type: 'pullUp', contact: 'out.centre', volts: 10, ohms: 1000 },
  ]);
  const meter = made({ in: ['rf', connector] }, [
    { id: 'meter', type: 'conductor', from: 'in.centre', to: 'in.shell', ohms: 1e6 },
  ]);
  const station = drawStation({
    units: { source: { made: source }, box: kind, ...(to && { meter: { made: meter } }) },
    cables: [`source.out > box.${from}`, ...(to ? [`box.${to} > meter.in`] : [])],
  });
  const circuit = buildCircuit(station);
  const dc = new DcSolver(circuit).solve(new Uint8Array(circuit.actors.length));
  const across = (port: string) => {
    const [a, b] = ['centre', 'shell'].map((c) => circuit.nodeOf.get(`box.${port}.${c}`) ?? -1) as [number, number];
    return dc.between(a, b) ?? 0;
  };
  return [across(from), to ? across(to) : 0];
}

// What DC does in each kind of in-line part: common practice.
describe('DC in RF parts', () => {
  it.each([
    ['swr-meter', 'transmitter', 'antenna', 'uhf-jack'],
    ['low-pass-filter', 'transmitter', 'antenna', 'uhf-jack'],
    ['arrestor', 'station', 'antenna', 'uhf-jack'],
    ['attenuator', 'one', 'two', 'bnc-jack'],
    ['changeover-by-line', 'antenna', 'receiver', 'bnc-jack'],
  ])('%s passes it from %s to %s', (kind, from, to, connector) => {
    const [near, far] = fed(kind, from, to, connector);
    expect(near).toBeGreaterThan(9.9);
    expect(far).toBeCloseTo(near, 2);
  });
  it.each([
    ['manual-tuner', 'transmitter', 'antenna', 'uhf-jack'],
    ['changeover-by-line', 'antenna', 'transmitter', 'bnc-jack'],
  ])('%s blocks it between %s and %s', (kind, from, to, connector) => {
    const [near, far] = fed(kind, from, to, connector);
    expect(near).toBeGreaterThan(9.9);
    expect(far).toBeLessThan(1e-3);
  });
  it('a dummy load is 50 Ω for it: 10 V × 50 / 1050', () => {
    expect(fed('dummy-load-5w', 'input', null, 'bnc-jack')[0]).toBeCloseTo(500 / 1050, 3);
  });
  it('a wire antenna is open', () => {
    expect(fed('wire-antenna', 'feed', null, 'uhf-jack')[0]).toBeGreaterThan(9.99);
  });
});
