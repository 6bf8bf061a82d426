import { isOpenGate, type SupplyPart } from '../../circuit/circuit.ts';
import type { Change } from '../../station/edit.ts';
import { ownFigureProblem } from '../../station/own-figure.ts';
import { findUnit } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { hasTypicalFigures } from '../../station/schema/unit-kind.ts';
import { loadsOf, loadVolts, unitOfPart } from '../../trial/parts.ts';
import { type Setup, seenIn } from './setup.ts';
import type { OwnFigure, PowerUpStep } from './sheet.ts';

/**
 * The figure of a unit's draw in a setup, that a supply's amperes can take the place of: all that they differ by is put
 * down to this unit. Not for a converter, whose draw follows from what hangs on it.
 */
export function drawFigure(
  station: Station,
  setup: Setup,
  { unit, supply }: { readonly unit: string; readonly supply: SupplyPart },
  name: string,
): OwnFigure | undefined {
  const { circuit, on, reach } = seenIn(setup);
  const [load, ...more] = loadsOf(circuit).filter(
    ({ part }) => unitOfPart(part) === unit && part.spec.law !== 'resistance',
  );
  if (!load || more.length > 0 || !reach || load.part.converter || supply.converter) return undefined;
  // A circuit leaves out the states that a setting rules out; then their numbers are not the document's.
  if (load.part.states.length !== (load.part.spec.states ?? []).length) return undefined;
  const state = load.part.states.findIndex(({ gate }) => isOpenGate(gate, on));
  const given = load.part.states[state]?.amount ?? load.part.spec.amount;
  const key = state < 0 ? 'amount' : `states.${state}.amount`;
  const per = load.part.spec.law === 'power' ? loadVolts(reach, load.part) : 1;
  if (given <= 0 || per <= 0 || !findUnit(station, unit)) return undefined;
  return { unit, key: `${load.part.spec.id}.${key}`, name, given, per };
}

/** What the figure becomes with a reading; null where it would be none. */
export function figureOfReading({ expected, figure }: PowerUpStep, value: number): number | null {
  if (!figure || expected?.value == null) return null;
  if (figure.per !== 'dBm') {
    const own = figure.given + (value - expected.value) * figure.per;
    return own > 0 ? own : null;
  }
  return value > 0 && expected.value > 0 ? figure.given + 10 * Math.log10(value / expected.value) : null;
}

/** Makes a reading the unit's own figure, as one step; null where it can't be one. */
export function takeAsFigure(station: Station, step: PowerUpStep, value: number): Change | null {
  const own = figureOfReading(step, value);
  const unit = step.figure && findUnit(station, step.figure.unit);
  if (own === null || !unit || !step.figure) return null;
  const kind = station.kinds[unit.kind];
  if (kind && ownFigureProblem(kind, step.figure.key, own)) return null;
  const overrides = { ...unit.overrides, [step.figure.key]: Number(own.toPrecision(6)) };
  const change: Change = { type: 'updateUnit', id: unit.id, set: { overrides } };
  return { type: 'all', name: 'Take a reading as own figure', changes: [change] };
}

/** Whether a figure is that of this very unit: entered, confirmed, or from its sheet. */
export function isOwn(station: Station, id: string, key: string): boolean {
  const unit = findUnit(station, id);
  const kind = unit && station.kinds[unit.kind];
  if (!unit || !kind) return false;
  return unit.overrides?.[key] !== undefined || unit.confirmed === true || !hasTypicalFigures(kind);
}
