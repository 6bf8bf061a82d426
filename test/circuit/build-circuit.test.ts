import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { type Circuit, isOpenGate, type Resistor } from '../../core/circuit/circuit.ts';
import { asDrawn } from '../../core/station/parts.ts';
import { drawStation } from '../stations/draw.ts';

/** Resistances between two contacts by their names, in milliohms. */
function between(circuit: Circuit, a: string, b: string): number[] {
  const [from, to] = [circuit.nodeOf.get(a), circuit.nodeOf.get(b)];
  return circuit.parts
    .filter(
      (p): p is Resistor => p.kind === 'resistor' && ((p.a === from && p.b === to) || (p.a === to && p.b === from)),
    )
    .map((p) => Math.round(p.ohms * 1e5) / 100);
}

const pair = { supply: 'bench-supply', tx: 'cw-transmitter-3w' };
const powered = (set = {}) =>
  drawStation({ units: pair, cables: [['supply.out > tx.power', { kind: 'lead-awg-18', lengthM: 2, ...set }]] });

describe('a supply and a transmitter on 2 m of AWG 18', () => {
  const circuit = buildCircuit(powered());
  // NBS Handbook 100: AWG 18 is 6.385 Ω per 1000 ft, 20.948 mΩ/m.
  it('each core is 2 m of wire', () => {
    expect(between(circuit, 'cable d1.a.plus', 'cable d1.b.centre')[0]).toBeCloseTo(2 * 20.948, 1);
    expect(between(circuit, 'cable d1.a.minus', 'cable d1.b.shell')[0]).toBeCloseTo(2 * 20.948, 1);
  });
  it('each joint is a contact: 2 mΩ at the posts, 30 mΩ at the barrel', () => {
    expect(between(circuit, 'supply.out.plus', 'cable d1.a.plus')).toEqual([2]);
    expect(between(circuit, 'cable d1.b.centre', 'tx.power.centre')).toEqual([30]);
  });
  it('the transmitter’s shells, sleeves and minus are on its case; the supply’s posts float', () => {
    for (const contact of ['power.shell', 'antenna.shell', 'key.sleeve'])
      expect(between(circuit, `tx.${contact}`, 'tx.chassis')).toEqual([5]);
    expect(between(circuit, 'supply.out.minus', 'supply.chassis')).toEqual([]);
    expect(between(circuit, 'tx.power.centre', 'tx.chassis')).toEqual([]);
  });
});

describe('cables', () => {
  it('wiring crosses the cores', () => {
    const circuit = buildCircuit(
      powered({
        wiring: [
          { a: 'plus', b: 'shell' },
          { a: 'minus', b: 'centre' },
        ],
      }),
    );
    expect(between(circuit, 'cable d1.a.plus', 'cable d1.b.shell')).toHaveLength(1);
    expect(between(circuit, 'cable d1.a.plus', 'cable d1.b.centre')).toHaveLength(0);
  });
  it('an in-line fuse divides the live core where it sits; a 10 A blade fuse is 7.7 mΩ cold', () => {
    const circuit = buildCircuit(powered({ fuse: { amps: 10, family: 'blade', atM: 0.5 } }));
    expect(between(circuit, 'cable d1.a.plus', 'cable d1.fuse in')[0]).toBeCloseTo(0.5 * 20.948, 1);
    expect(between(circuit, 'cable d1.fuse in', 'cable d1.fuse out')).toEqual([7.7]);
    expect(between(circuit, 'cable d1.fuse out', 'cable d1.b.centre')[0]).toBeCloseTo(1.5 * 20.948, 1);
  });
  it('a mono plug lies on ring and sleeve of a stereo jack', () => {
    const station = drawStation({
      units: { keyer: 'keyer', paddle: 'paddle' },
      cables: [['paddle.out > keyer.paddle', { kind: 'key-lead', plugs: { a: 'stereo-35-plug', b: 'mono-35-plug' } }]],
    });
    const circuit = buildCircuit(station);
    for (const contact of ['sleeve', 'ring'])
      expect(between(circuit, 'cable k1.b.sleeve', `keyer.paddle.${contact}`)).toEqual([20]);
    expect(between(circuit, 'cable k1.b.tip', 'keyer.paddle.tip')).toEqual([20]);
  });
  it('a plug that does not go in joins nothing', () => {
    const circuit = buildCircuit(powered({ plugs: { a: 'ring-terminals', b: 'usb-a-plug' } }));
    expect(circuit.parts.filter((p) => p.origin.type === 'mate' && p.origin.end === 'b')).toEqual([]);
  });
});

describe('hook-ups', () => {
  const station = drawStation({
    units: { tx: 'cw-transmitter-3w', sw: 'coax-switch', load: 'dummy-load-5w', wire: 'wire-antenna' },
    cables: [],
    hookups: [
      { id: 'one', name: 'One', settings: {} },
      { id: 'two', name: 'Two', settings: { sw: { position: 'two' } } },
    ],
  });
  it('a switch’s setting decides which position is through; the other one only leaks', () => {
    const open = (i: number) => {
      const { rf } = buildCircuit(station, station.hookups[i] ?? asDrawn);
      return rf.edges.map((e) => [rf.ports[e.b], isOpenGate(e.gate, new Uint8Array(0)), e.isolationDb]);
    };
    expect(open(0)).toEqual([
      ['sw.one', true, 50],
      ['sw.two', false, 50],
    ]);
    expect(open(1)).toEqual([
      ['sw.one', false, 50],
      ['sw.two', true, 50],
    ]);
  });
});
