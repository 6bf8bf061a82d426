import { fuseOhms, hotFuseOhms, openingTime } from '../catalog/fuses.ts';
import type { LoadPart, SupplyPart } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import type { Reach, Trial } from '../keydown/key-down.ts';
import { instantsOfPart } from '../rules/instants.ts';
import {
  type FusePart,
  fusesOf,
  loadsOf,
  type Numbered,
  placeOfContact,
  suppliesOf,
  unitName,
  unitOfPart,
} from '../rules/look.ts';
import { averageOf, batteryLife, busiest } from '../rules/power/battery-life.ts';
import { fusePlace, fuseSeat } from '../rules/power/fuse-place.ts';
import { limitOfWire, thinnestBehind } from '../rules/power/guarded-wire.ts';
import { shortsThroughFuses } from '../rules/power/short-amps.ts';
import type { Facts, TriedHookup } from '../rules/rule.ts';
import { mainFeederOf } from '../rules/trace.ts';
import { classOf, portName } from '../station/parts.ts';
import type { Station } from '../station/schema.ts';
import type { BatteryRow, Budget, FuseRow, LoadRow, SupplyRow, WireRow } from './report.ts';
import { wiresOf } from './whereabouts.ts';

/** The current budget: supplies, loads, fuses and power wires, hook-up by hook-up, in receive and in sending. */
export function budgetOf(facts: Facts): Budget {
  const { station } = facts;
  return {
    supplies: facts.hookups.flatMap((tried) =>
      suppliesOf(tried.trial.circuit).map((s) => supplyRow(station, tried, s)),
    ),
    loads: facts.hookups.flatMap((tried) => loadsOf(tried.trial.circuit).map((l) => loadRow(station, tried, l))),
    fuses: facts.hookups.flatMap((tried) => fuseRows(station, tried)),
    wires: facts.hookups.flatMap((tried) => wireRows(station, tried)),
    batteries: facts.hookups.flatMap((tried) => batteryRows(station, tried)),
  };
}

const inHookup = ({ hookup }: TriedHookup) => ({ hookup: hookup.id, hookupName: hookup.name });

function supplyRow(station: Station, tried: TriedHookup, { index, part }: Numbered<SupplyPart>): SupplyRow {
  const { trial } = tried;
  const sending = busiest(trial);
  const [receiveAmps, sendingAmps] = [trial.receive, sending].map((reach) => reach.dc.ampsIn(index)) as [
    number,
    number,
  ];
  const volts = (reach: Reach) => voltsBetween(reach.dc, part.plus, part.minus) ?? 0;
  return {
    ...inHookup(tried),
    unit: unitOfPart(part),
    element: part.spec.id,
    name: unitName(station, unitOfPart(part)),
    volts: part.spec.volts,
    receiveAmps,
    sendingAmps,
    averageAmps: averageOf(station.plan, receiveAmps, sendingAmps),
    ratedAmps: part.spec.amps,
    peakAmps: part.spec.peakAmps,
    marginAmps: part.spec.amps - sendingAmps,
    receiveVolts: volts(trial.receive),
    sendingVolts: volts(sending),
  };
}

function loadRow(station: Station, tried: TriedHookup, { index, part }: Numbered<LoadPart>): LoadRow {
  const { trial } = tried;
  const sending = busiest(trial);
  const volts = (reach: Reach) => voltsBetween(reach.dc, part.plus, part.minus) ?? 0;
  const [receiveAmps, sendingAmps] = [trial.receive, sending].map((reach) => reach.dc.ampsIn(index)) as [
    number,
    number,
  ];
  const supply = mainFeederOf(trial.circuit, sending, part.plus);
  const supplyVolts = supply ? (voltsBetween(sending.dc, supply.part.plus, supply.part.minus) ?? 0) : 0;
  const unit = unitOfPart(part);
  return {
    ...inHookup(tried),
    unit,
    element: part.spec.id,
    name: unitName(station, unit),
    port: portName(station, placeOfContact(unit, part.spec.plus)),
    receiveVolts: volts(trial.receive),
    sendingVolts: volts(sending),
    receiveAmps,
    sendingAmps,
    averageAmps: averageOf(station.plan, receiveAmps, sendingAmps),
    minV: part.spec.minV,
    maxV: part.spec.maxV,
    dropVolts: supply ? supplyVolts - volts(sending) : 0,
  };
}

function fuseRows(station: Station, tried: TriedHookup): FuseRow[] {
  const { trial } = tried;
  const sending = busiest(trial);
  return fusesOf(trial.circuit).flatMap(({ index, part }) => {
    const [receiveAmps, sendingAmps] = [trial.receive, sending].map((reach) => Math.abs(reach.dc.ampsIn(index))) as [
      number,
      number,
    ];
    const wire = thinnestBehind(station, trial.circuit, trial.receive.on, index);
    // A fuse of an outlet with nothing in it guards nothing.
    if (!wire && receiveAmps < 1e-6 && sendingAmps < 1e-6) return [];
    const place = fusePlace(station, part);
    const at =
      'cable' in place
        ? { cable: place.cable }
        : { unit: place.unit, ...(part.origin.type === 'element' && { element: part.origin.element }) };
    const row = {
      ...inHookup(tried),
      ...at,
      name: fuseSeat(station, part),
      ratedAmps: part.fuse.ratedAmps,
      receiveAmps,
      sendingAmps,
      share: sendingAmps / part.fuse.ratedAmps,
      guards: wire ? `${wire.number}, ${wire.wire}` : '',
      wireLimitAmps: wire?.limitAmps ?? null,
      wireLimitSource: wire?.limitSource ?? '',
      ...strainOf(trial, index, part),
    };
    return [row];
  });
}

/** What the most that it ever carries, and what a short, would do to a fuse. */
function strainOf(trial: Trial, index: number, { fuse }: FusePart) {
  const { ratedAmps, family, breakingAmps } = fuse;
  const amps = instantsOfPart(trial, index).map(({ reach }) => Math.abs(reach.dc.ampsIn(index)));
  const peakAmps = Math.max(...amps, trial.opened.find((o) => o.part === index)?.amps ?? 0);
  const time = openingTime(peakAmps, ratedAmps, family);
  return {
    peakAmps,
    opensInS: time && { from: time.fromS, to: Number.isFinite(time.toS) ? time.toS : null },
    coldOhms: fuseOhms(ratedAmps, family),
    hotOhms: hotFuseOhms(peakAmps, ratedAmps, family),
    breakingAmps,
    shortAmps: shortsThroughFuses(trial.circuit, trial.receive.on).get(index)?.amps ?? null,
  };
}

function wireRows(station: Station, tried: TriedHookup): WireRow[] {
  const { trial } = tried;
  const sending = busiest(trial);
  return station.cables.flatMap((cable) => {
    if (classOf(station, cable) !== 'dc') return [];
    const wires = wiresOf(trial.circuit, cable.id);
    const live = wires.find((w) => w.role === 'live');
    if (!live) return [];
    const limit = limitOfWire(station, { type: 'wire', cable: cable.id, row: live.row, role: 'live' });
    const drop = wires.reduce((sum, w) => sum + Math.abs(sending.dc.between(w.part.a, w.part.b) ?? 0), 0);
    return [
      {
        ...inHookup(tried),
        cable: cable.id,
        number: cable.number,
        wire: limit?.wire ?? station.cableKinds[cable.kind]?.name ?? cable.kind,
        receiveAmps: Math.abs(trial.receive.dc.ampsIn(live.index)),
        sendingAmps: Math.abs(sending.dc.ampsIn(live.index)),
        limitAmps: limit?.limitAmps ?? null,
        limitSource: limit?.limitSource ?? '',
        dropVolts: drop,
      },
    ];
  });
}

function batteryRows(station: Station, tried: TriedHookup): BatteryRow[] {
  return suppliesOf(tried.trial.circuit).flatMap((supply): BatteryRow[] => {
    const life = batteryLife(station, tried.trial, supply);
    if (!life) return [];
    const unit = unitOfPart(supply.part);
    const { quits, ...figures } = life;
    const name = quits === null ? null : unitName(station, quits);
    return [{ ...inHookup(tried), unit, name: unitName(station, unit), ...figures, quits: name }];
  });
}
