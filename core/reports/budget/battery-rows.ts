import { restCharges } from '../../catalog/battery.ts';
import type { SupplyPart } from '../../circuit/circuit.ts';
import type { DcSolution } from '../../dc/dc-solution.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import { unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type Numbered, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { type BatteryLife, batteryLife, busiest, solverByCharge } from '../../trial/power/battery-life.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { BatteryPoint, BatteryRow } from './rows.ts';

/** How long each battery of a hook-up lasts by the plan, and how it goes down. */
export const batteryRows = (station: Station, tried: TriedHookup): BatteryRow[] =>
  suppliesOf(tried.trial.circuit).flatMap((supply): BatteryRow[] => {
    const life = batteryLife(station, tried.trial, supply);
    if (!life) return [];
    const unit = unitOfPart(supply.part);
    const { quits, ...figures } = life;
    return [
      {
        ...inHookup(tried),
        unit,
        name: unitName(station, unit),
        ...figures,
        peakAmps: drawOf(station.plan, tried.trial, supply.index).peakAmps,
        cutOffV: supply.part.battery?.cutOffV ?? 0,
        quits: quits === null ? null : unitName(station, quits),
        course: courseOf(tried.trial, supply, life),
      },
    ];
  });

/**
 * The charge falls evenly at the average current. Volts at rest run straight between the points of the chemistry's
 * table, so that the charges of the table are enough.
 */
function courseOf(trial: Trial, supply: Numbered<SupplyPart>, life: BatteryLife): BatteryPoint[] {
  const { part } = supply;
  const { charge: now, quitCharge, hours } = life;
  if (!part.battery || !Number.isFinite(hours) || now <= quitCharge) return [];
  const solve = solverByCharge(trial, supply);
  const between = restCharges(part.battery.chemistry).filter((charge) => charge < now && charge > quitCharge);
  const volts = (dc: DcSolution) => voltsBetween(dc, part.plus, part.minus) ?? 0;
  return [now, ...between.reverse(), quitCharge].map((charge) => ({
    hours: (hours * (now - charge)) / now,
    charge,
    receiveVolts: volts(solve(charge, trial.receive)),
    sendingVolts: volts(solve(charge, busiest(trial))),
  }));
}
