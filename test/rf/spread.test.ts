import { describe, expect, it } from 'vitest';
import { type Circuit, emptyCircuit, type RfEdge } from '../../core/circuit/circuit.ts';
import { amplifyingRings } from '../../core/rf/amplifying-rings.ts';
import { wayTo } from '../../core/rf/rf-solution.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';
import { solveChain } from '../../core/rf/solve-chain.ts';
import { edgesAround } from '../../core/rf/spread.ts';

type Drawn = [from: string, to: string, db: number, set?: Partial<RfEdge>];

const amplifier = { oneWay: true } as const;
const none = new Uint8Array();

/** Ways between ports by name, and a source of so many dBm at `tx`. */
function net(dbm: number, drawn: Drawn[]): { circuit: Circuit; port: (name: string) => number } {
  const ports = [...new Set(['tx', ...drawn.map(([from]) => from), ...drawn.map(([, to]) => to)])];
  const numbers = new Map(ports.map((name, i) => [name, i]));
  const port = (name: string) => numbers.get(name) ?? -1;
  const edges = drawn.map(
    ([from, to, lossDb, set]): RfEdge => ({
      a: port(from),
      b: port(to),
      lossDb,
      isolationDb: null,
      oneWay: false,
      saturationDbm: null,
      maxWatts: null,
      gate: [],
      origin: { type: 'element', unit: from, element: to },
      ...set,
    }),
  );
  const spec = { id: 's', type: 'rfSource', port: 'tx', dbm } as const;
  const sources = [{ port: port('tx'), unit: 'tx', gate: [], spec }];
  return { circuit: { ...emptyCircuit, rf: { hertz: 14e6, ports, edges, sources, loads: [] } }, port };
}

function field({ circuit }: ReturnType<typeof net>) {
  const [found] = new RfSolver(circuit).solve(none).fields;
  if (!found) throw new Error('no field');
  return found;
}

/** A second coax from a transmitter's socket to what is behind its amplifier. */
const around: Drawn[] = [
  ['tx', 'in', 0.1],
  ['in', 'out', -10, amplifier],
  ['out', 'antenna', 0.2],
  ['tx', 'antenna', 0.3],
];

describe('a ring of gain', () => {
  it('is gone round once: the source keeps its own level, what is behind has the amplifier’s', () => {
    const drawn = net(37, around);
    const { best } = field(drawn);
    const level = (name: string) => best.get(drawn.port(name));
    expect(level('tx')).toEqual({ dbm: 37, from: null, edge: null, leak: false });
    // 37 − 0.1 + 10, and 0.2 less at the antenna.
    expect(level('out')?.dbm).toBeCloseTo(46.9, 9);
    expect(level('antenna')?.dbm).toBeCloseTo(46.7, 9);
    expect(wayTo(best, drawn.port('antenna')).ports.map((p) => drawn.circuit.rf.ports[p])).toEqual([
      ...['tx', 'in', 'out', 'antenna'],
    ]);
  });
  it('has a way for its power that comes to every port once', () => {
    const drawn = net(37, around);
    const { ports } = solveChain(drawn.circuit, none, field(drawn));
    expect(ports.map(({ port }) => drawn.circuit.rf.ports[port])).toEqual(['tx', 'in', 'out', 'antenna']);
  });
  it.each([
    ['an amplifier whose output is its input', [['tx', 'tx', -10]]],
    ['an amplifier that works both ways', [['tx', 'a', -10]]],
    [
      'two that feed one another',
      [
        ['tx', 'a', -10, amplifier],
        ['a', 'tx', -10, amplifier],
      ],
    ],
    ['isolation that is a gain', [['tx', 'a', 0, { isolationDb: -30, gate: [{ actor: 9, on: true }] }]]],
    [
      'a gain without end',
      [
        ['tx', 'a', Number.NEGATIVE_INFINITY],
        ['a', 'tx', 0],
      ],
    ],
    [
      'a loss that is no number',
      [
        ['tx', 'a', Number.NaN],
        ['a', 'tx', 0],
      ],
    ],
  ] as [string, Drawn[]][])('comes to an end: %s', (_, drawn) => {
    const made = net(0, drawn);
    const { best } = field(made);
    expect(best.get(made.port('tx'))?.from).toBeNull();
    for (const port of best.keys()) expect(wayTo(best, port).ports[0]).toBe(made.port('tx'));
    expect(solveChain(made.circuit, none, field(made)).ports.length).toBeGreaterThan(0);
    expect(amplifyingRings(waysOf(made)).length).toBeLessThanOrEqual(2);
  });
  it('gives the same levels in whatever order it is drawn', () => {
    const levels = [around, around.toReversed()].map((drawn) => {
      const made = net(37, drawn);
      return ['tx', 'in', 'out', 'antenna'].map((name) => field(made).best.get(made.port(name))?.dbm);
    });
    expect(levels[1]).toEqual(levels[0]);
  });
  it('twenty thousand cables in a row are followed to their end', () => {
    const row = Array.from({ length: 20_000 }, (_, i): Drawn => [i === 0 ? 'tx' : `${i}`, `${i + 1}`, 0.001]);
    const made = net(37, row);
    const { ports } = solveChain(made.circuit, none, field(made));
    expect(ports).toHaveLength(20_001);
  });
});

const waysOf = ({ circuit: { rf } }: ReturnType<typeof net>) => ({
  edges: rf.edges,
  around: edgesAround(rf.edges),
  open: new Set(rf.edges.flatMap(({ gate }, i) => (gate.length === 0 ? [i] : []))),
});

describe('rings that amplify', () => {
  const rings = (drawn: Drawn[]) =>
    amplifyingRings(waysOf(net(0, drawn))).map(({ stages, gainDb, lossDb }) => ({
      stages: stages.length,
      gainDb: Math.round(gainDb * 10) / 10,
      lossDb: Math.round(lossDb * 10) / 10,
    }));

  it.each([
    ['10 dB of gain and 0.6 dB back', around, [{ stages: 1, gainDb: 10, lossDb: 0.6 }]],
    [
      // Neither amplifier makes up for the way back alone: 10 + 8 − 15.
      'two amplifiers of 10 and 8 dB around 15 dB of loss',
      [
        ['a', 'b', -10, amplifier],
        ['b', 'c', 15],
        ['c', 'd', -8, amplifier],
        ['d', 'a', 0],
      ],
      [{ stages: 2, gainDb: 18, lossDb: 15 }],
    ],
    [
      'the same around 18 dB',
      [
        ['a', 'b', -10, amplifier],
        ['b', 'c', 18],
        ['c', 'a', -8, amplifier],
      ],
      [],
    ],
    [
      'two amplifiers of 10 dB in a row, nothing back',
      [
        ['a', 'b', -10, amplifier],
        ['b', 'c', -10, amplifier],
      ],
      [],
    ],
    [
      'one that saturates far below: it is the weak signal that grows',
      [
        ['a', 'b', -10, { oneWay: true, saturationDbm: -50 }],
        ['b', 'a', 3],
      ],
      [{ stages: 1, gainDb: 10, lossDb: 3 }],
    ],
  ] as [string, Drawn[], object[]][])('%s', (_, drawn, wanted) => expect(rings(drawn)).toEqual(wanted));
});
