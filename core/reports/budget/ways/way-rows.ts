import { voltsBetween } from '../../../keydown/feel.ts';
import type { TriedHookup } from '../../../rules/rule.ts';
import { placeOfContact, portName, unitName } from '../../../station/parts.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { loadVolts, unitOfPart } from '../../../trial/parts.ts';
import { busiest } from '../../../trial/power/battery-life.ts';
import { inHookup } from '../draw-of.ts';
import type { WayRow } from '../rows.ts';
import { suppliedWays } from './supplied-ways.ts';
import { wayParts } from './way-parts.ts';

/** For each load of a hook-up that has a supply while sending: its way there and back, part by part. */
export function wayRows(station: Station, tried: TriedHookup): WayRow[] {
  const { trial } = tried;
  const { circuit } = trial;
  const sending = busiest(trial);
  const { dc } = sending;
  return suppliedWays(trial).flatMap(({ load, supply, reach, out, back }): WayRow[] => {
    if (reach !== sending || !back) return [];
    const { part } = load;
    const unit = unitOfPart(part);
    const supplyVolts = voltsBetween(dc, supply.part.plus, supply.part.minus) ?? 0;
    const volts = loadVolts(sending, part);
    return [
      {
        ...inHookup(tried),
        unit,
        element: part.spec.id,
        name: unitName(station, unit),
        port: portName(station, placeOfContact(unit, part.spec.plus)),
        supply: unitName(station, unitOfPart(supply.part)),
        supplyVolts,
        loadVolts: volts,
        minV: part.spec.minV,
        dropVolts: supplyVolts - volts,
        parts: [
          ...wayParts(station, circuit, dc, supply.part.plus, out, false),
          ...wayParts(station, circuit, dc, part.minus, back, true),
        ],
      },
    ];
  });
}

/** The way on which the greatest share of its supply's voltage is lost; undefined where there is none. */
export const worstWay = (ways: readonly WayRow[]): WayRow | undefined =>
  ways.reduce<WayRow | undefined>((worst, way) => (worst && lost(worst) >= lost(way) ? worst : way), undefined);

const lost = ({ dropVolts, supplyVolts }: WayRow): number => (supplyVolts > 0 ? dropVolts / supplyVolts : 0);
