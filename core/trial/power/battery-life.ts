import { peukertHours, restVolts, usualPeukert } from '../../catalog/battery.ts';
import type { Circuit, SupplyPart } from '../../circuit/circuit.ts';
import type { DcSolution } from '../../dc/dc-solution.ts';
import { DcSolver } from '../../dc/dc-solver.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach, Trial } from '../../keydown/key-down.ts';
import { remember } from '../../station/remember.ts';
import type { Plan, Station } from '../../station/schema/schema.ts';
import { sendingsOf } from '../instants.ts';
import { isFeed, loadsOf, loadVolts, type Numbered, suppliesOf, unitOfPart, works } from '../parts.ts';
import { feedersOf } from './feeders.ts';

/** The sending moment that draws most from the supplies; receive where the hook-up has no control. */
export const busiest = remember((trial: Trial): Reach => {
  const total = (reach: Reach) => suppliesOf(trial.circuit).reduce((sum, { index }) => sum + reach.dc.ampsIn(index), 0);
  const moments = [trial.receive, ...sendingsOf(trial).map(({ reach }) => reach)];
  const totals = moments.map(total);
  return moments[totals.indexOf(Math.max(...totals))] ?? trial.receive;
});

/** How long a battery lasts; the fields are those of a budget's row. */
export interface BatteryLife {
  readonly ampHours: number;
  /** 1 is full. */
  readonly charge: number;
  readonly averageAmps: number;
  readonly sendingAmps: number;
  /** Until it is empty, by Peukert from its charge. */
  readonly hours: number;
  /** Until something quits in sending. */
  readonly usableHours: number;
  /** The charge at which that happens. */
  readonly quitCharge: number;
  /** Id of the unit that quits first; its own where its cut-off comes first; null where it can be emptied. */
  readonly quits: string | null;
  /** Ampere-hours that stay in it then. */
  readonly unusableAh: number;
  /** What the plan asks for in a day. */
  readonly planHours: number;
}

const leastAmps = 1e-6;

/** Charge is looked at in hundredths. */
const step = 0.01;

/**
 * Average by the plan: with `s` the share of time sending and `d` the share of it with the key down, it is
 * s·(d·sending + (1 − d)·receive) + (1 − s)·receive.
 */
export const averageOf = ({ sendShare, duty }: Plan, receive: number, sending: number): number =>
  receive + sendShare * duty * (sending - receive);

/** Average over a transmission: so much with the key down for this share of it, so much between. */
export const averageOver = (keyDown: number, between: number, duty: number): number =>
  duty * keyDown + (1 - duty) * between;

/**
 * How long a battery lasts by the plan: Peukert's hours at the average current from its charge, and how far down it
 * can go before a unit that it feeds falls below its working voltage in sending, or the battery below its cut-off.
 * Null for any other supply. Recovery in pauses, temperature and age are not looked at.
 */
export function batteryLife(station: Station, trial: Trial, { index, part }: Numbered<SupplyPart>): BatteryLife | null {
  const { battery } = part;
  if (!battery) return null;
  const { ampHours, charge, chemistry } = battery;
  const sending = busiest(trial);
  const averageAmps = averageOf(station.plan, trial.receive.dc.ampsIn(index), sending.dc.ampsIn(index));
  const { quitCharge, quits } = firstToQuit(trial, sending, { index, part });
  // What leaks through open contacts is no draw.
  const drawn = averageAmps < leastAmps ? 0 : averageAmps;
  const full = peukertHours(ampHours, drawn, battery.peukert ?? usualPeukert[chemistry]);
  const usable = Math.max(0, charge - quitCharge);
  return {
    ampHours,
    charge,
    averageAmps,
    sendingAmps: sending.dc.ampsIn(index),
    hours: charge === 0 ? 0 : full * charge,
    usableHours: usable === 0 ? 0 : full * usable,
    quitCharge,
    quits,
    unusableAh: ampHours * Math.min(quitCharge, charge),
    planHours: station.plan.hoursPerDay,
  };
}

/** The highest charge, in hundredths, at which something falls below its working voltage in sending. */
function firstToQuit(trial: Trial, sending: Reach, supply: Numbered<SupplyPart>) {
  const { circuit } = trial;
  const { part } = supply;
  const battery = part.battery as NonNullable<SupplyPart['battery']>;
  const solve = solverByCharge(trial, supply);
  // What does not work with a full battery either is another rule's business.
  const fed = loadsOf(circuit).filter(
    ({ part: load }) =>
      isFeed(load) &&
      works(load, loadVolts(sending, load)) &&
      feedersOf(circuit, sending.on, load.plus).some((s) => s.index === supply.index),
  );
  const quitsAt = (charge: number): string | null => {
    const dc = solve(charge, sending);
    const low = fed.find(({ part: load }) => (voltsBetween(dc, load.plus, load.minus) ?? 0) < load.spec.minV);
    if (low) return unitOfPart(low.part);
    return (voltsBetween(dc, part.plus, part.minus) ?? 0) < battery.cutOffV ? unitOfPart(part) : null;
  };
  let [lasts, fails] = [Math.round(Math.min(1, battery.charge) / step), -1];
  let quits = quitsAt(battery.charge);
  if (quits !== null) return { quitCharge: battery.charge, quits };
  while (lasts - fails > 1) {
    const middle = Math.floor((lasts + fails) / 2);
    const found = quitsAt(middle * step);
    if (found === null) lasts = middle;
    else [fails, quits] = [middle, found];
  }
  return { quitCharge: Math.max(0, fails * step), quits };
}

/** Solves a hook-up with one battery at another charge, in the state in which a moment has its actors. */
export function solverByCharge(trial: Trial, { index, part }: Numbered<SupplyPart>) {
  const { circuit } = trial;
  const { chemistry } = part.battery as NonNullable<SupplyPart['battery']>;
  const opened = new Set(trial.opened.map((o) => o.part));
  const solver = new DcSolver(circuit);
  return (charge: number, { on }: Reach): DcSolution => {
    const other = withVolts(circuit, index, restVolts(chemistry, charge));
    return solver.solverOf(other).solve(on, opened);
  };
}

function withVolts(circuit: Circuit, index: number, volts: number): Circuit {
  const parts = circuit.parts.map((p, i) =>
    i === index && p.kind === 'supply' ? { ...p, spec: { ...p.spec, volts } } : p,
  );
  return { ...circuit, parts };
}
