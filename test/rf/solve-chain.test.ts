import { describe, expect, it } from 'vitest';
import { type Circuit, emptyCircuit, type RfEdge, type RfLine, type RfLoad } from '../../core/circuit/circuit.ts';
import { magnitude } from '../../core/quantity/complex.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';
import { solveChain } from '../../core/rf/solve-chain.ts';

type Step = { lossDb: number } & Partial<Pick<RfEdge, 'line' | 'saturationDbm' | 'oneWay'>> & {
    tuner?: [number, number];
  };

/** A source and steps in a row to a load. */
function row(watts: number, hertz: number, steps: Step[], load: Partial<RfLoad['spec']> | null): Circuit {
  const edges = steps.map(
    ({ lossDb, line, saturationDbm = null, oneWay = false, tuner }, i): RfEdge => ({
      a: i,
      b: i + 1,
      lossDb,
      isolationDb: null,
      oneWay,
      saturationDbm,
      maxWatts: null,
      gate: [],
      origin: line ? { type: 'cable', cable: `c${i}` } : { type: 'element', unit: `u${i}`, element: 'e' },
      ...(line && { line }),
      ...(tuner && {
        spec: { id: 't', type: 'matcher', a: 'a', b: 'b', lossDb, minOhms: tuner[0], maxOhms: tuner[1] },
      }),
    }),
  );
  const spec = { id: 's', type: 'rfSource', port: 'p', dbm: 10 * Math.log10(watts * 1000) } as const;
  const end: RfLoad = {
    port: steps.length,
    unit: 'end',
    gate: [],
    spec: { id: 'l', type: 'rfLoad', port: 'p', role: 'antenna', ohms: 50, ...load },
  };
  const rf = {
    hertz,
    ports: Array.from({ length: steps.length + 1 }, (_, i) => `u.p${i}`),
    edges,
    sources: [{ port: 0, unit: 'tx', gate: [], spec }],
    loads: load ? [end] : [],
  };
  return { ...emptyCircuit, rf };
}

function chain(...given: Parameters<typeof row>) {
  const circuit = row(...given);
  const on = new Uint8Array();
  const [field] = new RfSolver(circuit).solve(on).fields;
  if (!field) throw new Error('no field');
  return solveChain(circuit, on, field);
}

const coax = (matchedDb: number, lengthM: number, z0 = 50, velocityFactor = 0.66): Step => {
  const line: RfLine = {
    z0,
    velocityFactor,
    lossDbPer100m: (matchedDb * 100) / lengthM,
    lengthM,
    tolerance: 0.2,
    maxVolts: null,
  };
  return { lossDb: matchedDb, line };
};

describe('from the antenna back to the source', () => {
  it('a matched chain has no reflection, and loses what its parts lose', () => {
    const { ports, steps, ends } = chain(100, 14e6, [coax(1, 20), { lossDb: 0.5 }], { ohms: 50 });
    for (const port of ports) expect(port.swr).toBeCloseTo(1, 9);
    expect(steps.map((s) => s.lossDb)).toEqual([expect.closeTo(1, 9), expect.closeTo(0.5, 9)]);
    // 100 W less 1.5 dB.
    expect(ends[0]?.watts).toBeCloseTo(100 * 10 ** -0.15, 6);
    // 100 W in 50 Ω: 70.7 V rms, 100 V peak.
    expect(ports[0]?.peakVolts).toBeCloseTo(100, 6);
  });
  it('SWR 3 behind 1 dB: 2.32 at the transmitter, half a decibel more lost', () => {
    // ARRL Handbook, additional loss by SWR: 1 dB of matched loss and an SWR of 3 give 0.50 dB more and 2.32 at the input.
    const { ports, steps } = chain(100, 14e6, [coax(1, 20)], { ohms: 150 });
    expect(ports[0]?.swr).toBeCloseTo(2.32, 2);
    expect((steps[0]?.lossDb ?? 0) - 1).toBeCloseTo(0.5, 2);
  });
  it('a quarter wave of 50 Ω line turns 25 Ω into 100 Ω', () => {
    const { ports } = chain(10, 29.9792458e6, [coax(0, 2.5, 50, 1)], { ohms: 25 });
    expect(ports[0]?.ohms.re).toBeCloseTo(100, 6);
    expect(ports[0]?.ohms.im).toBeCloseTo(0, 6);
    expect(ports[0]?.swr).toBeCloseTo(2, 9);
    // A ninth of 10 W comes back (rho is a third).
    expect(ports[0]?.reflectedWatts).toBeCloseTo(10 / 9, 6);
  });
  it('a pad hides what is behind it: 6 dB in front of an open end look like 50·(1+¼)/(1−¼)', () => {
    const { ports } = chain(10, 14e6, [{ lossDb: 6.0206 }], null);
    expect(ports[0]?.swr).toBeCloseTo((1 + 0.25) / (1 - 0.25), 4);
  });
  it('an open end sends all of it back, at twice the voltage', () => {
    const { ports, ends } = chain(100, 14e6, [], null);
    expect(ends).toEqual([]);
    expect(ports[0]).toMatchObject({ swr: Number.POSITIVE_INFINITY });
    expect(ports[0]?.reflectedWatts).toBeCloseTo(100, 6);
    expect(ports[0]?.netWatts).toBeCloseTo(0, 9);
    expect(ports[0]?.peakVolts).toBeCloseTo(200, 6);
  });
  it('a tuner in reach gives 50 Ω to the transmitter; what the line behind it loses by SWR stays lost', () => {
    const { ports, steps, ends } = chain(100, 14e6, [{ lossDb: 0.4, tuner: [10, 600] }, coax(0.75, 15)], {
      ohms: 2500,
    });
    expect(ports[0]?.swr).toBeCloseTo(1, 9);
    expect(steps[0]?.match).not.toBe('outside');
    // 0.75 dB of matched loss becomes 7.3 dB at SWR 50: 10 log((a² − ρ²)/(a(1 − ρ²))), ARRL Handbook.
    expect(steps[1]?.lossDb).toBeCloseTo(7.3, 1);
    expect(ends[0]?.watts).toBeCloseTo(100 * 10 ** (-(0.4 + (steps[1]?.lossDb ?? 0)) / 10), 6);
  });
  it('a tuner out of reach lets the mismatch through', () => {
    const { ports, steps } = chain(100, 14e6, [{ lossDb: 0.4, tuner: [10, 600] }], { ohms: 4000 });
    expect(steps[0]?.match).toBe('outside');
    expect(ports[0]?.swr).toBeGreaterThan(10);
  });
  it('an amplifier shows 50 Ω and makes no more than it can', () => {
    const stages = [{ lossDb: -13, saturationDbm: 46, oneWay: true }, coax(0.5, 5)];
    const { ports, ends } = chain(5, 14e6, stages, { ohms: 50 });
    expect(ports[0]?.swr).toBeCloseTo(1, 9);
    // 5 W and 13 dB would be 100 W; it stops at 46 dBm, 39.8 W.
    expect(ports[1]?.forwardWatts).toBeCloseTo(10 ** 1.6, 6);
    expect(ends[0]?.watts).toBeCloseTo(10 ** 1.6 * 10 ** -0.05, 6);
  });
  it('an antenna by its table: half way between two rows on the logarithm of frequency', () => {
    const table = [
      { hz: 10e6, ohms: 20, reactance: -100 },
      { hz: 40e6, ohms: 60, reactance: 100 },
    ];
    const { ends } = chain(10, 20e6, [], { table });
    expect(ends[0]?.ohms).toEqual({ re: expect.closeTo(40, 9), im: expect.closeTo(0, 9) });
    expect(chain(10, 5e6, [], { table }).ends[0]).toMatchObject({ doubt: 'beyond', ohms: { re: 20, im: -100 } });
  });
  it('an antenna by its SWR alone', () => {
    const { ports, ends } = chain(10, 14e6, [], { swr: 3 });
    expect(ends[0]?.doubt).toBe('swr');
    expect(ports[0]?.swr).toBeCloseTo(3, 9);
  });
});

describe('energy', () => {
  it.each([[{ ohms: 30, reactance: 40 }], [{ ohms: 200, reactance: -150 }], [{ ohms: 5, reactance: 0 }]])(
    'what goes into the line is what comes out and what it loses: %j',
    (load) => {
      const { ports, steps, ends } = chain(100, 21e6, [{ lossDb: 1 }, coax(0.8, 12), { lossDb: 0.3 }], load);
      const net = ports.map((p) => p.netWatts);
      steps.forEach((step, i) => {
        expect(10 * Math.log10((net[i] ?? 0) / (net[i + 1] ?? 0))).toBeCloseTo(step.lossDb, 6);
        expect(step.lossDb).toBeGreaterThanOrEqual(step.matchedLossDb - 1e-9);
      });
      expect(ends[0]?.watts).toBeCloseTo(net.at(-1) ?? 0, 6);
      expect((ports[0]?.forwardWatts ?? 0) - (ports[0]?.reflectedWatts ?? 0)).toBeCloseTo(net[0] ?? 0, 6);
      expect(magnitude(ports.at(-1)?.ohms ?? { re: 0, im: 0 })).toBeCloseTo(Math.hypot(load.ohms, load.reactance), 6);
    },
  );
});
