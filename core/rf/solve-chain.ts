import { type ActorStates, type Circuit, isOpenGate, type RfEdge, type RfLoad } from '../circuit/circuit.ts';
import { add, type Complex, complex, divide, exp, magnitude, multiply } from '../quantity/complex.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import { remember } from '../station/remember.ts';
import { loadOhms } from './antenna-ohms.ts';
import type { Chain, ChainEnd, ChainPort, ChainStep } from './chain.ts';
import { inputImpedance, propagation } from './line.ts';
import { type MatchVerdict, matchOf } from './match.ts';
import { isOpenEnd, openEnd, reflectionCoefficient, swrOfReflection } from './reflection.ts';
import type { RfField } from './rf-solution.ts';

/** What sockets, meters and pads are made for. */
const systemOhms = 50;
const one = complex(1);
/** A dead short would divide by nothing. */
const leastOhms = 1e-6;

/** `solveChain` at the source's own level, worked out once for each state of a region. */
export const chainOf = (circuit: Circuit, on: ActorStates, field: RfField): Chain => chainsOf(circuit)(field, on);

const chainsOf = remember((circuit: Circuit) => {
  const known = new WeakMap<RfField, Chain>();
  return (field: RfField, on: ActorStates): Chain => {
    const chain = known.get(field) ?? solveChain(circuit, on, field);
    known.set(field, chain);
    return chain;
  };
});

/**
 * The way of an active source's power: impedances from where it ends back to the source, then volts and watts from the
 * source on. A coax is a lossy line; what only attenuates is a pad that is matched to 50 Ω; an amplifier shows 50 Ω
 * and starts anew with what it makes; a tuner brings a load inside its range to 50 Ω and is a pad for any other. The
 * source gives `dbm` into 50 Ω (its own level if not given), from 50 Ω: 100 W into an open end are 100 W reflected.
 */
export function solveChain(circuit: Circuit, on: ActorStates, field: RfField, dbm?: number): Chain {
  const source = circuit.rf.sources[field.source];
  if (!source) throw new Error(`no source ${field.source}`);
  const walk = new Walk(circuit, on, field, source.port);
  return walk.from(field.source, source.port, wattsFromDbm(dbm ?? source.spec.dbm));
}

/** A step onward from a port. */
interface Onward {
  readonly edge: RfEdge;
  readonly to: number;
}

class Walk {
  private readonly onward = new Map<number, Onward[]>();
  private readonly known = new Map<number, Complex>();
  private readonly ports: ChainPort[] = [];
  private readonly steps: ChainStep[] = [];
  private readonly ends: ChainEnd[] = [];

  constructor(
    private readonly circuit: Circuit,
    private readonly on: ActorStates,
    field: RfField,
    private readonly start: number,
  ) {
    for (const [to, { from, edge }] of field.selected) {
      const step = edge === null ? undefined : circuit.rf.edges[edge];
      if (from === null || !step) continue;
      const list = this.onward.get(from);
      if (list) list.push({ edge: step, to });
      else this.onward.set(from, [{ edge: step, to }]);
    }
  }

  from(source: number, port: number, watts: number): Chain {
    const rho = reflectionCoefficient(this.ohmsAt(port), systemOhms);
    this.arrive(port, Math.sqrt(systemOhms * watts) * magnitude(add(one, rho)));
    return { source, sourceWatts: watts, ports: this.ports, steps: this.steps, ends: this.ends };
  }

  /** Ohms looking from a port away from the source: all that hangs there, in parallel. */
  private ohmsAt(port: number): Complex {
    const found = this.known.get(port);
    if (found) return found;
    const branches = [
      ...this.loadsAt(port).map(({ ohms }) => ohms),
      ...(this.onward.get(port) ?? []).map(({ edge, to }) => this.ohmsInto(edge, to)),
    ];
    const ohms = parallel(branches);
    this.known.set(port, ohms);
    return ohms;
  }

  private loadsAt(port: number) {
    const { loads, hertz } = this.circuit.rf;
    // A transceiver's own receiver is not what it sends into.
    const isOwn = (l: RfLoad) => l.port === this.start && l.spec.role === 'receiver';
    const here = loads.filter((l) => l.port === port && !isOwn(l) && isOpenGate(l.gate, this.on));
    return here.map((load) => ({ load, ...loadOhms(load.spec, hertz) }));
  }

  /** Ohms that the near end of a step shows. */
  private ohmsInto(edge: RfEdge, to: number): Complex {
    const behind = this.ohmsAt(to);
    if (edge.line) return inputImpedance({ ...edge.line, hertz: this.circuit.rf.hertz, load: behind });
    if (edge.lossDb < 0 || isMatched(matchIn(edge, behind))) return complex(systemOhms);
    return edge.origin.type === 'cable' ? behind : ohmsOf(seenThrough(edge, behind));
  }

  /** Takes in that so many volts rms stand at a port, and goes on from there. */
  private arrive(port: number, volts: number) {
    const ohms = this.ohmsAt(port);
    const siemens = siemensOf(ohms);
    const rho = reflectionCoefficient(ohms, systemOhms);
    const wave = volts / Math.max(magnitude(add(one, rho)), 1e-9);
    this.ports.push({
      port,
      ohms,
      swr: swrOfReflection(magnitude(rho)),
      forwardWatts: wave ** 2 / systemOhms,
      reflectedWatts: (wave * magnitude(rho)) ** 2 / systemOhms,
      netWatts: volts ** 2 * siemens.re,
      peakVolts: volts * Math.SQRT2,
    });
    for (const end of this.loadsAt(port)) this.ends.push({ ...end, watts: volts ** 2 * siemensOf(end.ohms).re });
    for (const { edge, to } of this.onward.get(port) ?? []) this.step(port, volts, edge, to);
  }

  private step(from: number, volts: number, edge: RfEdge, to: number) {
    const behind = this.ohmsAt(to);
    const inWatts = volts ** 2 * siemensOf(this.ohmsInto(edge, to)).re;
    const match = matchIn(edge, behind);
    const { after, peakVolts } = edge.line
      ? this.alongLine(volts, edge.line, behind)
      : { after: voltsAfter(volts, inWatts, edge, behind, match), peakVolts: null };
    const outWatts = after ** 2 * siemensOf(behind).re;
    const lossDb = inWatts > 0 && outWatts > 0 ? 10 * Math.log10(inWatts / outWatts) : edge.lossDb;
    this.steps.push({ edge, from, to, lossDb, matchedLossDb: edge.lossDb, peakVolts, match });
    this.arrive(to, after);
  }

  private alongLine(volts: number, line: NonNullable<RfEdge['line']>, load: Complex) {
    const whole = { ...line, hertz: this.circuit.rf.hertz, load };
    const { re, im } = propagation(whole);
    const atLoad = reflectionCoefficient(load, line.z0);
    const atNear = multiply(atLoad, exp({ re: -2 * re, im: -2 * im }));
    const near = volts / Math.max(magnitude(add(one, atNear)), 1e-9);
    const far = near * Math.exp(-re);
    const most = Math.max(near * (1 + magnitude(atNear)), far * (1 + magnitude(atLoad)));
    return { after: far * magnitude(add(one, atLoad)), peakVolts: most * Math.SQRT2 };
  }
}

/** Volts rms behind an element. */
function voltsAfter(volts: number, inWatts: number, edge: RfEdge, behind: Complex, match: MatchVerdict | null): number {
  const out = add(one, reflectionCoefficient(behind, systemOhms));
  if (edge.lossDb < 0) {
    const most = edge.saturationDbm === null ? Number.POSITIVE_INFINITY : wattsFromDbm(edge.saturationDbm);
    return Math.sqrt(systemOhms * Math.min(inWatts * 10 ** (-edge.lossDb / 10), most)) * magnitude(out);
  }
  if (isMatched(match)) return Math.sqrt((inWatts * 10 ** (-edge.lossDb / 10)) / siemensOf(behind).re);
  if (edge.origin.type === 'cable') return volts;
  const wave = volts / Math.max(magnitude(add(one, seenThrough(edge, behind))), 1e-9);
  return wave * 10 ** (-edge.lossDb / 20) * magnitude(out);
}

/** What a tuner makes of its load; null for anything else. */
const matchIn = ({ spec }: RfEdge, behind: Complex): MatchVerdict | null =>
  spec?.type === 'matcher' ? matchOf(behind, spec) : null;

const isMatched = (match: MatchVerdict | null): boolean => match === 'matches' || match === 'doubtful';

/** The reflection that is seen through a matched pad: its loss counts on the way there and on the way back. */
function seenThrough(edge: RfEdge, behind: Complex): Complex {
  const { re, im } = reflectionCoefficient(behind, systemOhms);
  const share = 10 ** (-edge.lossDb / 10);
  return { re: re * share, im: im * share };
}

function ohmsOf(rho: Complex): Complex {
  const below = { re: 1 - rho.re, im: -rho.im };
  if (magnitude(below) === 0) return openEnd;
  return multiply(complex(systemOhms), divide(add(one, rho), below));
}

function siemensOf(ohms: Complex): Complex {
  if (isOpenEnd(ohms)) return complex(0);
  return divide(one, magnitude(ohms) < leastOhms ? complex(leastOhms) : ohms);
}

function parallel(branches: readonly Complex[]): Complex {
  const [first, ...others] = branches;
  if (!first) return openEnd;
  if (others.length === 0) return first;
  const sum = branches.map(siemensOf).reduce(add);
  return magnitude(sum) === 0 ? openEnd : divide(one, sum);
}
