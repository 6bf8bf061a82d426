import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Network } from './network.ts';

describe('a supply beyond its limit', () => {
  it('holds its peak current into a short: 4 A through 0.1 Ω is 0.4 V', () => {
    const { volts, amps, dc } = new Network().supply('p', '0', 13.8, 0.05, 4, 'limits').resistor('p', '0', 0.1).solve();
    expect(volts('p', '0')).toBeCloseTo(0.4, 9);
    expect(amps(0)).toBe(4);
    expect(dc.modes.get(0)).toBe('limiting');
  });
  it('holds its peak current into loads that want more: they fade, 4 A of 5 A at 4/5 of the drop-out voltage', () => {
    const { volts, dc } = new Network()
      .supply('p', '0', 13.8, 0.05, 4, 'limits')
      .load('p', '0', 'current', 3, 6)
      .load('p', '0', 'current', 2, 6)
      .solve();
    expect(volts('p', '0')).toBeCloseTo(4.8, 9);
    expect(dc.settled).toBe(true);
  });
  it('shuts down and stays down', () => {
    const { volts, amps, dc } = new Network()
      .supply('p', '0', 13.8, 0.05, 4, 'shutsDown')
      .load('p', '0', 'current', 5)
      .solve();
    expect(volts('p', '0')).toBeCloseTo(0, 6);
    expect(amps(0)).toBe(0);
    expect(dc.modes.get(0)).toBe('off');
  });
  it('just sags where nothing limits it: 13.8 V − 20 A × 0.3 Ω', () => {
    expect(
      new Network().supply('p', '0', 13.8, 0.3, 4, 'sags').load('p', '0', 'current', 20).solve().volts('p', '0'),
    ).toBeCloseTo(7.8, 9);
  });
});

describe('loads', () => {
  it('a reversed load draws next to nothing: a thousandth of what it would while fading, 13.8 V × 2 A / 6 V / 1000', () => {
    const { volts, amps } = new Network().supply('p', '0', 13.8, 0.05).load('0', 'p', 'current', 2).solve();
    expect(volts('p', '0')).toBeCloseTo(13.8, 2);
    expect(amps(1)).toBeCloseTo((-13.8 * 2) / 6 / 1000, 5);
  });
  it('a load with its minus open gets nothing, and the answer is found', () => {
    const { amps, dc } = new Network().supply('p', '0', 13.8, 0.05).load('p', 'open', 'current', 2).solve();
    expect(Math.abs(amps(1))).toBeLessThan(1e-9);
    expect(dc.settled).toBe(true);
  });
  it('a pull-up fed from the supply takes its current there: 12 V through 1 kΩ into 1 Ω', () => {
    const { amps } = new Network()
      .supply('p', '0', 13.8, 0.05)
      .load('p', '0', 'current', 0.1)
      .pullUp('line', '0', 12, 1000, 'p')
      .resistor('line', '0', 1)
      .solve();
    expect(amps(2)).toBeCloseTo(12 / 1001, 9);
    expect(amps(0)).toBeCloseTo(0.1 + 12 / 1001, 9);
  });
  it('one from a cell of its own leaves the supply alone', () => {
    const { amps } = new Network()
      .supply('p', '0', 13.8, 0.05)
      .load('p', '0', 'current', 0.1)
      .pullUp('line', '0', 3, 1000, null)
      .resistor('line', '0', 1)
      .solve();
    expect(amps(0)).toBeCloseTo(0.1, 9);
  });
});

describe('supplies side by side', () => {
  it('the lower one gives nothing, and takes nothing', () => {
    const { amps, dc } = new Network()
      .supply('p', '0', 13.8, 0.05)
      .supply('p', '0', 12.6, 0.05)
      .load('p', '0', 'current', 2)
      .solve();
    expect(amps(0)).toBeCloseTo(2, 9);
    expect(amps(1)).toBe(0);
    expect(dc.modes.get(1)).toBe('idle');
  });
  it('two alike share: each gives half', () => {
    const { amps } = new Network()
      .supply('p', '0', 13.8, 0.05)
      .supply('p', '0', 13.8, 0.05)
      .load('p', '0', 'current', 2)
      .solve();
    expect([amps(0), amps(1)].map((a) => Math.round(a * 1e6) / 1e6)).toEqual([1, 1]);
  });
  it('diodes keep the lower one out of the higher', () => {
    const { amps, volts } = new Network()
      .supply('a', '0', 13.8, 0.05)
      .supply('b', '0', 12.6, 0.05)
      .diode('a', 'p', 1e-6, 1, 0.01)
      .diode('b', 'p', 1e-6, 1, 0.01)
      .load('p', '0', 'current', 2)
      .solve();
    expect(amps(0)).toBeCloseTo(2, 4);
    expect(Math.abs(amps(1))).toBeLessThan(1e-5);
    // I = IS (exp(V/Vt) − 1): 2 A at 0.0258649 · ln(2e6 + 1) volts, and 2 A through 10 mΩ and 50 mΩ.
    expect(volts('p', '0')).toBeCloseTo(13.8 - 0.0258649 * Math.log(2e6 + 1) - 2 * 0.06, 6);
  });
});

describe('a converter', () => {
  it('takes from its input what its output gives, by its efficiency', () => {
    const { amps, volts, dc } = new Network()
      .supply('p', '0', 13.8, 0.1)
      .converter('p', '0', 'q', '0', 5, 0.8)
      .load('q', '0', 'resistance', 5)
      .solve();
    expect(dc.settled).toBe(true);
    // 1 A at 5 V (a milliohm aside) is 5 W, 6.25 W at the input: V² − 13.8 V + 0.625 = 0.
    const input = (13.8 + Math.sqrt(13.8 ** 2 - 4 * 0.1 * 6.25)) / 2;
    expect(volts('q', '0')).toBeCloseTo(5, 2);
    expect(volts('p', '0')).toBeCloseTo(input, 3);
    expect(amps(0) * volts('p', '0')).toBeCloseTo((amps(2) * 5) / 0.8, 6);
  });
  it('goes off below its input range', () => {
    const { volts, dc } = new Network()
      .supply('p', '0', 8, 0.1)
      .converter('p', '0', 'q', '0', 5, 0.8)
      .load('q', '0', 'resistance', 5)
      .solve();
    expect(volts('q', '0')).toBeCloseTo(0, 6);
    expect(dc.modes.get(2)).toBe('off');
  });
});

describe('range of the numbers', () => {
  it('a microohm and a gigohm in one network keep their digits', () => {
    const { volts, amps } = new Network()
      .supply('p', '0', 10, 1e-6)
      .resistor('p', 'a', 1e-6)
      .resistor('a', 'b', 1e9)
      .resistor('b', 'c', 1e-6)
      .resistor('c', '0', 1e9)
      .solve();
    expect(volts('b', '0')).toBeCloseTo(5, 9);
    expect(amps(2) / 5e-9).toBeCloseTo(1, 6);
  });
  it('islands without a supply stand at their own zero', () => {
    const { volts, dc } = new Network().supply('p', '0', 10, 0.1).resistor('p', '0', 10).resistor('x', 'y', 5).solve();
    expect(volts('x', 'y')).toBe(0);
    expect(dc.island[0]).not.toBe(dc.island[2]);
  });
});

/** A random connected network: a tree, and some links across it; constant-current and resistive loads to node 0. */
const networks = fc.record({
  tree: fc.array(fc.record({ parent: fc.nat(), ohms: fc.double({ min: 1e-4, max: 0.5, noNaN: true }) }), {
    minLength: 2,
    maxLength: 25,
  }),
  links: fc.array(fc.record({ a: fc.nat(), b: fc.nat(), ohms: fc.double({ min: 1e-3, max: 10, noNaN: true }) }), {
    maxLength: 8,
  }),
  loads: fc.array(
    fc.record({
      at: fc.nat(),
      law: fc.constantFrom('current', 'power', 'resistance'),
      amount: fc.double({ min: 0.01, max: 2, noNaN: true }),
    }),
    { maxLength: 6 },
  ),
});

function build({ tree, links, loads }: typeof networks extends fc.Arbitrary<infer T> ? T : never, thinner = 1) {
  const n = new Network().supply('n0', '0', 13.8, 0.02);
  const branches: [string, string, number][] = [];
  tree.forEach(({ parent, ohms }, i) => {
    branches.push([`n${parent % (i + 1)}`, `n${i + 1}`, ohms * (i === 0 ? thinner : 1)]);
  });
  for (const { a, b, ohms } of links) {
    const [from, to] = [a % (tree.length + 1), b % (tree.length + 1)];
    if (from !== to) branches.push([`n${from}`, `n${to}`, ohms]);
  }
  for (const [a, b, ohms] of branches) n.resistor(a, b, ohms);
  const taken = loads.map(({ at, law, amount }) => ({
    at: `n${at % (tree.length + 1)}`,
    law,
    amount: law === 'resistance' ? 5 / amount : amount,
  }));
  for (const { at, law, amount } of taken) n.load(at, '0', law, amount, 3);
  return { n, branches, taken };
}

describe('laws, on generated networks', () => {
  it('currents at every node sum to zero, and power in is power out and loss', () => {
    fc.assert(
      fc.property(networks, (given) => {
        const { n, branches, taken } = build(given);
        const { volts, amps } = n.solve();
        const into = new Map<string, number>();
        const add = (node: string, current: number) => into.set(node, (into.get(node) ?? 0) + current);
        add('n0', amps(0));
        let lost = 0;
        branches.forEach(([a, b, ohms], i) => {
          add(a, -amps(i + 1));
          add(b, amps(i + 1));
          lost += amps(i + 1) ** 2 * ohms;
        });
        let used = 0;
        taken.forEach(({ at }, i) => {
          const current = amps(1 + branches.length + i);
          add(at, -current);
          used += current * volts(at, '0');
        });
        for (const rest of into.values()) expect(Math.abs(rest)).toBeLessThan(1e-8);
        const given_ = amps(0) * 13.8 - amps(0) ** 2 * 0.02;
        expect(Math.abs(given_ - lost - used)).toBeLessThan(1e-7 * Math.max(1, given_));
      }),
      { numRuns: 150 },
    );
  });
  // In a mesh one thinner wire can send a current round another way and so help a load: the law is one of trees.
  it('a thinner wire in a tree never raises a load’s voltage where loads draw constant current', () => {
    fc.assert(
      fc.property(networks, fc.double({ min: 1, max: 20, noNaN: true }), (given, thinner) => {
        const plain = { ...given, links: [], loads: given.loads.map((l) => ({ ...l, law: 'current' as const })) };
        const [thick, thin] = [build(plain).n.solve(), build(plain, thinner).n.solve()];
        // A load that fades draws less, and the others rise.
        const { taken } = build(plain);
        fc.pre(taken.every(({ at }) => thin.volts(at, '0') > 3));
        for (const { at } of taken) expect(thin.volts(at, '0')).toBeLessThanOrEqual(thick.volts(at, '0') + 1e-9);
      }),
      { numRuns: 80 },
    );
  });
});
