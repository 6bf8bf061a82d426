import { describe, expect, it } from 'vitest';
import { Network } from '../dc/network.ts';

// Two station networks solved by ngspice 39.3 (operating point, reltol 1e-10) and, apart from it, by a plain Newton
// nodal solution; the two agree to nine digits. Inputs and results stand here as they were printed.
const within = (value: number, printed: number) => expect(Math.abs(value / printed - 1)).toBeLessThan(1e-6);

describe('DC1: a tree of five loads (ngspice 39.3)', () => {
  const n = new Network().supply('psup', '0', 13.8, 0.02);
  n.resistor('psup', 'm1', 0.0020605)
    .resistor('m1', 'm2', 0.0015)
    .resistor('m2', 'p', 0.0005)
    .resistor('n', '0', 0.0025605);
  const branches: [name: string, fuse: number, lead: number][] = [
    ['a', 0.0025, 0.010422],
    ['b', 0.03, 0.031422],
    ['c', 0.12, 0.033308],
    ['d', 0.055, 0.052962],
    ['e', 0.015, 0.02635],
  ];
  for (const [name, fuse, lead] of branches) {
    n.resistor('p', `${name}f`, fuse).resistor(`${name}f`, `${name}p`, lead).resistor(`${name}n`, 'n', lead);
  }
  n.load('ap', 'an', 'current', 20).load('bp', 'bn', 'power', 12).load('cp', 'cn', 'current', 0.5);
  n.load('dp', 'dn', 'resistance', 10).load('ep', 'en', 'power', 25);
  const { volts, amps, dc } = n.solve();
  it('settles', () => expect(dc.settled).toBe(true));
  it.each([
    ['v(psup)', volts('psup', '0'), 13.30733],
    ['v(bp)', volts('p', '0'), 13.207305679],
    ['v(bn)', volts('n', '0'), 0.063074076],
    ['rig, 20 A', volts('ap', 'an'), 12.677351603],
    ['receiver, 12 W', volts('bp', 'bn'), 13.0589161],
    ['tuner, 0.5 A', volts('cp', 'cn'), 13.050923603],
    ['lamp, 10 Ω', volts('dp', 'dn'), 12.936059362],
    ['computer, 25 W', volts('ep', 'en'), 13.014181162],
    ['total amperes', amps(0), 24.633499745],
  ])('%s', (_, value, printed) => within(value, printed));
});

/** Two returns in parallel: the rig's minus lead and the shields of its coax and audio leads. */
function mesh({ minusFuse = 0.0045, coax = 0.012, audio = 0.085 }) {
  const n = new Network().supply('p', '0', 13.8, 0.02);
  n.resistor('p', 'p1', 0.0045)
    .resistor('p1', 'tp', 0.010422)
    .resistor('tn', 'n1', 0.010422)
    .resistor('n1', '0', minusFuse);
  n.load('tp', 'tn', 'current', 20);
  n.resistor('p', 'u1', 0.055)
    .resistor('u1', 'up', 0.033308)
    .resistor('un', '0', 0.033308)
    .load('up', 'un', 'power', 6);
  n.resistor('tn', 'un', coax);
  n.resistor('p', 'a1', 0.12)
    .resistor('a1', 'ap', 0.052962)
    .resistor('an', '0', 0.052962)
    .load('ap', 'an', 'current', 0.2);
  n.resistor('an', 'tn', audio);
  return n.solve();
}

describe('DC2: returns in parallel, four cases (ngspice 39.3)', () => {
  const cases = [
    { name: 'A all leads sound', given: {}, p: 13.386900091, chassis: 0.2118787 },
    { name: 'B minus fuse open', given: { minusFuse: 1e9 }, p: 13.38664634, chassis: 0.696484319 },
    {
      name: 'C minus fuse and coax shield open',
      given: { minusFuse: 1e9, coax: 1e9 },
      p: 13.386999281,
      chassis: 2.769832399,
    },
    { name: 'D minus sound, shields open', given: { coax: 1e9, audio: 1e9 }, p: 13.386999281, chassis: 0.29844 },
  ];
  it.each(cases)('$name', ({ given, p, chassis }) => {
    const { volts } = mesh(given);
    within(volts('p', '0'), p);
    within(volts('tn', '0'), chassis);
  });
  it('A: the coax shield carries 4.34 A beside the 14.2 A of the minus lead', () => {
    const { amps } = mesh({});
    within(amps(10), 4.34191999);
    within(amps(3), 14.1990819);
  });
});

describe('a constant power from a source with resistance', () => {
  const fed = (watts: number) => new Network().supply('p', '0', 13.8, 0.5).load('p', '0', 'power', watts, 3).solve();
  it('50 W from 13.8 V and 0.5 Ω: the upper root of V² − 13.8 V + 25 = 0', () => {
    const { volts, amps } = fed(50);
    within(volts('p', '0'), (13.8 + Math.sqrt(13.8 ** 2 - 4 * 25)) / 2);
    within(amps(0), 4.290005);
  });
  it('100 W can’t be had (13.8²/4/0.5 = 95.2 W): an answer all the same, below the drop-out', () => {
    const { volts, dc } = fed(100);
    expect(volts('p', '0')).toBeLessThan(3);
    expect(dc.settled).toBe(true);
  });
});

/** A fused shunt diode across one unit, a series diode before another. Reversed, the supply is turned round. */
function protectedUnits(reversed: boolean) {
  const n = new Network();
  if (reversed) n.supply('0', 'p', 13.8, 0.02);
  else n.supply('p', '0', 13.8, 0.02);
  n.resistor('p', 'f1', 0.0075)
    .resistor('f1', 'u1p', 0.020948)
    .resistor('u1n', '0', 0.020948)
    .load('u1p', 'u1n', 'resistance', 5);
  n.diode('u1n', 'u1p', 1e-9, 1.8, 0.005);
  n.resistor('p', 'f2', 0.03).resistor('f2', 'd2a', 0.033308).diode('d2a', 'u2p', 2e-6, 1.05, 0.02);
  n.load('u2p', 'u2n', 'power', 10, 3).resistor('u2n', '0', 0.033308);
  return n.solve();
}

describe('DC3: protection by diodes (ngspice 39.3; the diode’s own constants agree to seven digits)', () => {
  const close = (value: number, printed: number) => expect(Math.abs(value / printed - 1)).toBeLessThan(1e-5);
  it('the right way round', () => {
    const { volts, amps, dc } = protectedUnits(false);
    expect(dc.settled).toBe(true);
    close(volts('p', '0'), 13.730570848);
    close(volts('u1p', 'u1n'), 13.596250768);
    close(volts('d2a', 'u2p'), 0.3636904);
    close(volts('u2p', 'u2n'), 13.294205);
    close(amps(1), 2.719250155);
    close(amps(0), 3.4714576);
  });
  // In the deck the reversed unit is a plain resistor, which lets current through either way round; here a load lets
  // none through, and 2.05 V across 5 Ω is 0.41 of the 169 A: compared to half a percent.
  it('reversed: the shunt diode takes it all', () => {
    const { volts, amps } = protectedUnits(true);
    expect(Math.abs(amps(1) / -169.34277 - 1)).toBeLessThan(0.005);
    expect(Math.abs(volts('u1p', 'u1n') / -2.048289 - 1)).toBeLessThan(0.005);
    // What the series diode lets through backwards, 2 µA, stands as millivolts on the load.
    expect(Math.abs(volts('u2p', 'u2n'))).toBeLessThan(0.01);
  });
});
