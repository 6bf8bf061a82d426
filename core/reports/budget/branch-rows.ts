import type { PullUpPart } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import { findCable, portName, unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type FusePart, unitOfPart } from '../../trial/parts.ts';
import { busiest } from '../../trial/power/battery-life.ts';
import { fuseSeat } from '../../trial/power/fuse-place.ts';
import { type BranchGate, branchGatesOf } from './branch-gates-of.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { BranchRow } from './rows.ts';
import type { SuppliedWay } from './ways/supplied-ways.ts';

/** The leads that leave supplies and outlets in a hook-up, each after the one that it hangs behind. */
export function branchRows(station: Station, tried: TriedHookup): BranchRow[] {
  const rows: BranchRow[] = [];
  for (const gate of branchGatesOf(tried.trial)) addRows(rows, station, tried, gate, [], 0);
  return rows;
}

function addRows(
  rows: BranchRow[],
  station: Station,
  tried: TriedHookup,
  gate: BranchGate,
  before: readonly FusePart[],
  depth: number,
) {
  const fuses = [...before, ...gate.fuses];
  const [only, ...others] = gate.behind;
  if (!gate.lead) {
    // A fuse in front of one lead belongs to that lead; one with no lead behind it is the inside of a unit.
    if (!only) return;
    if (others.length === 0 && only.loads.length === gate.loads.length) {
      addRows(rows, station, tried, only, fuses, depth);
      return;
    }
  }
  rows.push(rowOf(station, tried, gate, fuses, depth));
  for (const next of gate.behind) addRows(rows, station, tried, next, [], depth + 1);
}

function rowOf(
  station: Station,
  tried: TriedHookup,
  gate: BranchGate,
  fuses: readonly FusePart[],
  depth: number,
): BranchRow {
  const { lead } = gate;
  const [fuse] = fuses;
  const [first] = gate.loads;
  return {
    ...inHookup(tried),
    name: lead ? portName(station, lead) : fuse ? fuseSeat(station, fuse) : '',
    unit: lead?.unit ?? (fuse ? unitOfPart(fuse) : ''),
    cable: lead?.cable ?? '',
    number: lead ? (findCable(station, lead.cable)?.number ?? lead.cable) : '',
    supply: first ? unitName(station, unitOfPart(first.supply.part)) : '',
    depth,
    fuses: fuses.map((f) => ({ name: fuseSeat(station, f), ratedAmps: f.fuse.ratedAmps })),
    loads: [...new Set(gate.loads.map(({ load }) => unitName(station, unitOfPart(load.part))))],
    ...drawOf(station.plan, tried.trial, gate.part, Math.abs),
    drawnAmps: drawnBy(tried.trial, gate.loads),
  };
}

/** What loads draw while sending, and what the pull-ups that hang on their plus push into closed lines. */
function drawnBy(trial: Trial, loads: readonly SuppliedWay[]): number {
  const { dc } = busiest(trial);
  const plus = new Set(loads.map(({ load }) => load.part.plus));
  const isFed = ({ fedFrom, reference }: PullUpPart) =>
    fedFrom !== null && plus.has(fedFrom) && voltsBetween(dc, fedFrom, reference) !== null;
  return [
    ...loads.map(({ load }) => dc.ampsIn(load.index)),
    ...trial.circuit.parts.map((part, i) => (part.kind === 'pullUp' && isFed(part) ? dc.ampsIn(i) : 0)),
  ].reduce((sum, amps) => sum + amps, 0);
}
