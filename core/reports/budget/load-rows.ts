import { voltsBetween } from '../../keydown/feel.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import { placeOfContact, portName, unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { loadsOf, loadVolts, unitOfPart } from '../../trial/parts.ts';
import { busiest } from '../../trial/power/battery-life.ts';
import { mainFeederOf } from '../../trial/power/feeders.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { LoadRow } from './rows.ts';

/** What each load of a hook-up draws, and the voltage that reaches it. */
export const loadRows = (station: Station, tried: TriedHookup): LoadRow[] =>
  loadsOf(tried.trial.circuit).map(({ index, part }) => {
    const { trial } = tried;
    const sending = busiest(trial);
    const sendingVolts = loadVolts(sending, part);
    const supply = mainFeederOf(trial.circuit, sending, part.plus)?.part;
    const supplyVolts = supply ? (voltsBetween(sending.dc, supply.plus, supply.minus) ?? 0) : 0;
    const unit = unitOfPart(part);
    return {
      ...inHookup(tried),
      unit,
      element: part.spec.id,
      name: unitName(station, unit),
      port: portName(station, placeOfContact(unit, part.spec.plus)),
      receiveVolts: loadVolts(trial.receive, part),
      sendingVolts,
      ...drawOf(station.plan, trial, index),
      minV: part.spec.minV,
      maxV: part.spec.maxV,
      dropVolts: supply ? supplyVolts - sendingVolts : 0,
    };
  });
