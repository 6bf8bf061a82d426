import type { Circuit, CircuitPart, LoadPart, Resistor, SupplyPart } from '../../circuit/circuit.ts';
import { findUnit } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { isOwn } from './own-figures.ts';
import { dcSolverOf, isSameSetup, type Probe, type Seen, type Setup, seenIn } from './setup.ts';
import { openOhms, type PowerUpQuantity } from './sheet.ts';
import { inWorkings } from './workings.ts';

type Span = readonly [low: number, high: number];

/**
 * By how much resistances differ from their figures. Wire: cut lengths ±5 %, copper ±20 K at 0.39 % per kelvin
 * (IEC 60228), the rest for drawn sizes. Fuses: from a cool one to one at its rating, which has up to 1.7 times its cold
 * resistance (blade fuse data sheets). Joints: from fresh to worn, common practice. Resistors: 5 % types.
 */
const resistances: Record<'wire' | 'fuse' | 'joint' | 'inside' | 'lumped', Span> = {
  wire: [0.85, 1.2],
  fuse: [0.8, 1.7],
  joint: [0.2, 5],
  inside: [0.5, 2],
  lumped: [0.95, 1.05],
};

/** What a unit draws, and the voltage that it pulls a line to: of this very unit, or typical. Common practice. */
const loads = { own: 0.05, typical: 0.2 };
const pullUps = { own: 0.05, typical: 0.1 };

/** Regulation of a supply where its kind does not say; of one whose voltage was measured. Common practice. */
const regulation = { own: 0.005, unknown: 0.03 };

/**
 * What the meter adds: a share and so much besides. Hand meters: 0.5 % and a digit in volts, 1.5 % and 2 mA in amperes,
 * 1 % and the ohms of its own leads; a wattmeter in the line 5 %, beside its scale; all common practice.
 */
const meters: Record<PowerUpQuantity, readonly [share: number, plus: number]> = {
  V: [0.005, 0.01],
  A: [0.015, 0.002],
  ohm: [0.01, 0.5],
  W: [0.05, 0.05],
  swr: [0, 0],
};

/** A diode's drop: a Schottky one, a warm one, a cold one of silicon. Common practice. */
const diodes: Span = [0.5, 1.35];

type Direction = -1 | 1;

/** A setup's circuit with every figure at an end of its tolerance: volts of supplies (resistances against them), loads. */
function atCorner(station: Station, circuit: Circuit, supply: Direction, load: Direction): Circuit {
  const parts = circuit.parts.map((part): CircuitPart => {
    if (part.kind === 'resistor') return { ...part, ohms: part.ohms * pick(resistances[sortOf(part)], -supply) };
    if (part.kind === 'diode') return { ...part, slopeVolts: part.slopeVolts * pick(diodes, -supply) };
    if (part.kind === 'supply') return cornerSupply(station, part, supply);
    if (part.kind === 'load') return cornerLoad(station, part, load);
    if (part.kind !== 'pullUp') return part;
    const own = isOwnPart(station, part.origin, `${part.spec.id}.volts`) ? pullUps.own : pullUps.typical;
    const { volts, ohms } = part.spec;
    return { ...part, spec: { ...part.spec, volts: volts * (1 + load * own), ohms: ohms * (1 - load * own) } };
  });
  return { ...circuit, parts };
}

const pick = ([low, high]: Span, direction: number): number => (direction < 0 ? low : high);

function sortOf(part: Resistor): keyof typeof resistances {
  if (part.lumped) return 'lumped';
  if (part.fuse) return 'fuse';
  return part.origin.type === 'wire' ? 'wire' : part.origin.type === 'element' ? 'inside' : 'joint';
}

function cornerSupply(station: Station, part: SupplyPart, direction: Direction): SupplyPart {
  const { volts, maxVolts, sourceOhms, id } = part.spec;
  const known = maxVolts !== undefined && maxVolts > volts && !part.battery ? maxVolts / volts - 1 : regulation.unknown;
  const { origin } = part;
  // Its figures confirmed, it still regulates as they say; only a voltage that was read is known better.
  const read = origin.type === 'element' && findUnit(station, origin.unit)?.overrides?.[`${id}.volts`] !== undefined;
  const share = read ? regulation.own : known;
  const ohms = sourceOhms * pick(resistances.inside, -direction);
  return { ...part, spec: { ...part.spec, volts: volts * (1 + direction * share), sourceOhms: ohms } };
}

function cornerLoad(station: Station, part: LoadPart, direction: Direction): LoadPart {
  const grow = (amount: number, key: string) => {
    const share = isOwnPart(station, part.origin, `${part.spec.id}.${key}`) ? loads.own : loads.typical;
    // What a resistance draws falls as it grows.
    return amount * (1 + (part.spec.law === 'resistance' ? -direction : direction) * share);
  };
  return {
    ...part,
    spec: { ...part.spec, amount: grow(part.spec.amount, 'amount') },
    states: part.states.map((state, i) => ({ ...state, amount: grow(state.amount, `states.${i}.amount`) })),
  };
}

/** The same for a figure of a part. */
const isOwnPart = (station: Station, origin: CircuitPart['origin'], key: string): boolean =>
  origin.type === 'element' && isOwn(station, origin.unit, key);

/** The setup at its four corners; who is on stays as it is in the middle. */
const seenAtCorners = inWorkings((setup: Setup): readonly Seen[] => {
  const seen = seenIn(setup);
  const directions: readonly Direction[] = [-1, 1];
  return directions.flatMap((supply) =>
    directions.map((load): Seen => {
      const circuit = atCorner(setup.station, seen.circuit, supply, load);
      if (!seen.reach) return { ...seen, circuit };
      const dc = dcSolverOf(setup, circuit).solve(seen.on, seen.open);
      return { ...seen, circuit, dc, reach: { ...seen.reach, dc } };
    }),
  );
}, isSameSetup);

/** A line that is held down shows no more than this. */
const closedVolts = 0.1;

/**
 * A battery that is charged takes what its state of charge leaves: nothing when full. The range of a supply's amperes while
 * one takes some; undefined while none does.
 */
export function chargeRange(setup: Setup, probe: Probe) {
  const { circuit, dc } = seenIn(setup);
  const charges = circuit.parts.some((part, i) => part.kind === 'supply' && part.sinks && (dc?.ampsIn(i) ?? 0) < -1e-3);
  if (!charges) return undefined;
  return () => {
    const { from, to } = rangeOf(setup, probe, 'A');
    return { from: Math.min(0, from), to: Math.max(0, to) };
  };
}

/** The range in which a reading is right: what the figures behind it leave open, and what the meter adds. */
export function rangeOf(setup: Setup, probe: Probe, quantity: 'V' | 'A' | 'ohm'): { from: number; to: number } {
  const values = [seenIn(setup), ...seenAtCorners(setup)].map((seen) => probe(seen) ?? openOhms);
  const [share, plus] = meters[quantity];
  const widened = values.flatMap((v) => [v - Math.abs(v) * share - plus, v + Math.abs(v) * share + plus]);
  const [low, high] = [Math.min(...widened), Math.max(...widened)];
  if (quantity === 'ohm') return { from: Math.max(0, low), to: high };
  // What other currents leave on a closed line has one sign or the other; none at all is as right.
  const most = Math.max(Math.abs(low), Math.abs(high));
  return quantity === 'V' && most < closedVolts ? { from: -most, to: most } : { from: low, to: high };
}
