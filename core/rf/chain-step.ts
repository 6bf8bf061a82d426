import type { RfEdge } from '../circuit/circuit.ts';
import { add, type Complex, complex, divide, exp, magnitude, multiply } from '../quantity/complex.ts';
import { wattsFromDbm } from '../quantity/decibel.ts';
import { leastOhms } from '../quantity/least-ohms.ts';
import { inputImpedance, propagation } from './line.ts';
import { type MatchVerdict, matchOf } from './match-of.ts';
import { isOpenEnd, openEnd, reflectionCoefficient } from './reflection.ts';
import { systemOhms } from './system-ohms.ts';

const one = complex(1);

/** Ohms that the near end of a cable or element shows with so many behind it. */
export function ohmsInto(edge: RfEdge, behind: Complex, hertz: number): Complex {
  if (edge.line) return inputImpedance({ ...edge.line, hertz, load: behind });
  if (edge.lossDb < 0 || isMatched(matchIn(edge, behind))) return complex(systemOhms);
  return edge.origin.type === 'cable' ? behind : ohmsOf(seenThrough(edge, behind));
}

/** Volts rms behind a cable or element with so many before it; the highest peak on a line; what a tuner makes of its load. */
export function voltsBehind(
  edge: RfEdge,
  volts: number,
  behind: Complex,
  hertz: number,
): { after: number; peakVolts: number | null; match: MatchVerdict | null } {
  if (edge.line) return { ...alongLine(volts, edge.line, behind, hertz), match: null };
  const match = matchIn(edge, behind);
  const inWatts = volts ** 2 * siemensOf(ohmsInto(edge, behind, hertz)).re;
  return { after: voltsAfter(volts, inWatts, edge, behind, match), peakVolts: null, match };
}

function alongLine(volts: number, line: NonNullable<RfEdge['line']>, load: Complex, hertz: number) {
  const { re, im } = propagation({ ...line, hertz, load });
  const atLoad = reflectionCoefficient(load, line.z0);
  const atNear = multiply(atLoad, exp({ re: -2 * re, im: -2 * im }));
  const near = volts / Math.max(magnitude(add(one, atNear)), 1e-9);
  const far = near * Math.exp(-re);
  const most = Math.max(near * (1 + magnitude(atNear)), far * (1 + magnitude(atLoad)));
  return { after: far * magnitude(add(one, atLoad)), peakVolts: most * Math.SQRT2 };
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

/** The conductance of what may be open or shorted. */
export function siemensOf(ohms: Complex): Complex {
  if (isOpenEnd(ohms)) return complex(0);
  return divide(one, magnitude(ohms) < leastOhms ? complex(leastOhms) : ohms);
}

/** Of all that hangs on one port; open where nothing does. */
export function parallel(branches: readonly Complex[]): Complex {
  const [first, ...others] = branches;
  if (!first) return openEnd;
  if (others.length === 0) return first;
  const sum = branches.map(siemensOf).reduce(add);
  return magnitude(sum) === 0 ? openEnd : divide(one, sum);
}
