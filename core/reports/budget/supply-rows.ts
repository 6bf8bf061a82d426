import { voltsBetween } from '../../keydown/feel.ts';
import type { Reach } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import { unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { busiest } from '../../trial/power/battery-life.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { SupplyRow } from './rows.ts';

/** What each supply of a hook-up gives, batteries and converters among them. */
export const supplyRows = (station: Station, tried: TriedHookup): SupplyRow[] =>
  suppliesOf(tried.trial.circuit).map(({ index, part }) => {
    const { trial } = tried;
    const draw = drawOf(station.plan, trial, index);
    const volts = (reach: Reach) => voltsBetween(reach.dc, part.plus, part.minus) ?? 0;
    return {
      ...inHookup(tried),
      unit: unitOfPart(part),
      element: part.spec.id,
      name: unitName(station, unitOfPart(part)),
      volts: part.spec.volts,
      ...draw,
      ratedAmps: part.spec.amps,
      ratedPeakAmps: part.spec.peakAmps,
      marginAmps: part.spec.amps - draw.sendingAmps,
      receiveVolts: volts(trial.receive),
      sendingVolts: volts(busiest(trial)),
    };
  });
