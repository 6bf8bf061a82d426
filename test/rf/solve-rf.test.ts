import { describe, expect, it } from 'vitest';
import { type Circuit, emptyCircuit, type RfEdge } from '../../core/circuit/circuit.ts';
import { wayTo } from '../../core/rf/rf-solution.ts';
import { RfSolver } from '../../core/rf/rf-solver.ts';

interface EdgeDrawing {
  between: [string, string];
  lossDb: number;
  isolationDb?: number;
  saturationDbm?: number;
  oneWay?: boolean;
  /** In force while the switch is over; otherwise while it is not, or always. */
  when?: 'over' | 'back';
}

/** RF ports and ways alone; actor 0 is the switch. */
function rfNet(source: string, dbm: number, drawn: EdgeDrawing[]): Circuit & { port(name: string): number } {
  const ports = [...new Set([source, ...drawn.flatMap((e) => e.between)])];
  const port = (name: string) => ports.indexOf(name);
  const edges = drawn.map(
    ({ between: [a, b], lossDb, isolationDb = null, saturationDbm = null, oneWay = false, when }): RfEdge => ({
      a: port(a),
      b: port(b),
      lossDb,
      isolationDb,
      oneWay,
      saturationDbm,
      maxWatts: null,
      gate: when ? [{ actor: 0, on: when === 'over' }] : [],
      origin: { type: 'cable', cable: `${a}-${b}` },
    }),
  );
  const spec = { id: 's', type: 'rfSource', port: source, dbm } as const;
  const rf = {
    hertz: 14_000_000,
    ports,
    edges,
    sources: [{ port: port(source), unit: 'tx', gate: [], spec }],
    loads: [],
  };
  return { ...emptyCircuit, rf, port };
}

const at = (net: ReturnType<typeof rfNet>, name: string, over = 0) =>
  new RfSolver(net).solve(Uint8Array.of(over)).levelAt(net.port(name));

describe('levels, by adding decibels', () => {
  it('5 W through 0.10, 0.25 and 0.60 dB: 36.99 − 0.95 dBm, 4.018 W', () => {
    const net = rfNet('tx', 10 * Math.log10(5000), [
      { between: ['tx', 'a'], lossDb: 0.1 },
      { between: ['a', 'b'], lossDb: 0.25 },
      { between: ['b', 'c'], lossDb: 0.6 },
    ]);
    expect(10 ** ((at(net, 'c')?.dbm ?? 0) / 10) / 1000).toBeCloseTo(4.018, 3);
  });
  // 1 kW and 40 dB of isolation leave 100 mW at the receiver (+20 dBm): worked in an antenna mailing list, December 2007.
  it('leaks by the isolation of what is not selected', () => {
    const net = rfNet('tx', 60, [{ between: ['tx', 'rx'], lossDb: 0.2, isolationDb: 40, when: 'back' }]);
    expect(at(net, 'rx', 1)).toMatchObject({ dbm: 20, leak: true });
    expect(at(net, 'rx', 0)).toMatchObject({ dbm: 59.8, leak: false });
  });
  it('takes the strongest of several ways and tells which', () => {
    const net = rfNet('tx', 30, [
      { between: ['tx', 'far'], lossDb: 10 },
      { between: ['tx', 'mid'], lossDb: 2 },
      { between: ['mid', 'far'], lossDb: 3 },
    ]);
    const solution = new RfSolver(net).solve(Uint8Array.of(0));
    expect(solution.levelAt(net.port('far'))?.dbm).toBe(25);
    const way = wayTo(solution.fields[0]?.best ?? new Map(), net.port('far'));
    expect(way.ports.map((p) => net.rf.ports[p])).toEqual(['tx', 'mid', 'far']);
  });
  it('an amplifier adds its gain up to what it can make, and passes nothing back', () => {
    const amplifier = { between: ['in', 'out'] as [string, string], lossDb: -13, saturationDbm: 46, oneWay: true };
    const net = (dbm: number, source = 'in') => rfNet(source, dbm, [amplifier]);
    expect(at(net(30), 'out')?.dbm).toBe(43);
    expect(at(net(36), 'out')?.dbm).toBe(46);
    expect(at(net(36, 'out'), 'in')).toBeNull();
  });
  it('a loop with gain comes to an end', () => {
    const net = rfNet('tx', 0, [
      { between: ['tx', 'a'], lossDb: 0 },
      { between: ['a', 'b'], lossDb: -10, oneWay: true },
      { between: ['b', 'a'], lossDb: 3, oneWay: true },
    ]);
    expect(Number.isFinite(at(net, 'b')?.dbm)).toBe(true);
  });
  it('groups ports by selected ways alone', () => {
    const net = rfNet('tx', 30, [
      { between: ['ant', 'tx'], lossDb: 0.2, isolationDb: 35, when: 'over' },
      { between: ['ant', 'rx'], lossDb: 0.2, isolationDb: 35, when: 'back' },
    ]);
    const solution = new RfSolver(net).solve(Uint8Array.of(1));
    const group = (name: string) => solution.groupOf(net.port(name));
    expect(group('tx')).toBe(group('ant'));
    expect(group('rx')).not.toBe(group('ant'));
  });
});
