import { adapters } from '../../catalog/adapters.ts';
import { formatLength } from '../../quantity/format.ts';
import { kindOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import { ringAt } from '../../station/ring-at.ts';
import { ringName } from '../../station/ring-colours.ts';
import type { Cable, CableEnd, PortRef, Station } from '../../station/schema/schema.ts';
import { heatShrinkFor, sleeveMm } from '../make/heat-shrink.ts';
import { isReadyMade } from '../make/is-ready-made.ts';
import { cutLengthM, piecesOf } from '../make/strip.ts';
import { adaptersAt, isWanted, type MakeWish } from '../make/what-to-make.ts';
import { holderName, orderedFuse } from '../ordered-fuse.ts';
import { type Basket, fill, rowsOf } from './basket.ts';
import type { BuyRow } from './buy-row.ts';

/** Cable to buy beyond what is cut where the station does not say; common practice. */
export const usualAllowance = 0.1;

const ends: readonly CableEnd[] = ['a', 'b'];

/**
 * What to buy: cable by the metre with the station's allowance, up to the next tenth of a metre; plugs, adapters,
 * holders and sleeves as many as are used; fuses with one of each rating to spare, those of units too; ready-made
 * cables by kind, plugs and length; a ring for each jack that has one and for each plug in it. Each cable counts once, whatever hook-ups it is in.
 */
export function whatToBuy(station: Station, wish: MakeWish): BuyRow[] {
  const basket: Basket = new Map();
  for (const cable of station.cables.filter((c) => isWanted(c, wish))) {
    if (isReadyMade(station, cable)) addReadyMade(basket, station, cable);
    else addParts(basket, station, cable);
    for (const end of ends) {
      for (const id of adaptersAt(station, cable, end))
        fill(basket, 'adapter', adapters[id]?.name ?? id, 1, cable.number);
    }
    if (cable.fuse) {
      fill(basket, 'fuse', orderedFuse(cable.fuse), 1, cable.number);
      fill(basket, 'holder', holderName(cable.fuse.family), 1, cable.number);
    }
  }
  addUnitFuses(basket, station);
  addRings(basket, station);
  return rowsOf(basket, station.settings.cableAllowance ?? usualAllowance);
}

function addReadyMade(basket: Basket, station: Station, cable: Cable) {
  const kind = station.cableKinds[cable.kind];
  const plugs = ends.map((end) => plugOf(station, cable, end)?.name ?? '?').sort();
  const name = kind?.plugs ? kind.name : `${kind?.name}, ${plugs.join(' to ')}`;
  const length = formatLength(cable.lengthM, station.settings.units);
  fill(basket, 'ready-made', `${name}, ${length}`, 1, cable.number);
}

function addParts(basket: Basket, station: Station, cable: Cable) {
  const plugs = ends.map((end) => plugOf(station, cable, end));
  const kind = station.cableKinds[cable.kind]?.name ?? cable.kind;
  fill(basket, 'cable', kind, cutLengthM(cable.lengthM, plugs), cable.number);
  for (const plug of plugs) {
    if (plug && piecesOf(plug) > 0) fill(basket, 'plug', plug.name, piecesOf(plug), cable.number);
  }
  const { overCable, overCores } = heatShrinkFor(plugs, cable.fuse !== undefined);
  const metres = (pieces: number, mm: number) => (pieces * mm) / 1000;
  if (overCable > 0) {
    fill(basket, 'sleeve', 'heat-shrink over the cable', metres(overCable, sleeveMm.overCable), cable.number);
  }
  if (overCores > 0) {
    fill(basket, 'sleeve', 'heat-shrink over cores', metres(overCores, sleeveMm.overCores), cable.number);
  }
}

function addUnitFuses(basket: Basket, station: Station) {
  for (const unit of station.units) {
    for (const element of kindOf(station, unit).elements) {
      if (element.type !== 'conductor' || element.fuseAmps === undefined) continue;
      const fuse = { amps: element.fuseAmps, family: element.fuseFamily ?? ('blade' as const) };
      fill(basket, 'fuse', orderedFuse(fuse), 1, unit.name);
    }
  }
}

/** The same whatever cables are made: a ring comes onto a plug that is there, too. */
function addRings(basket: Basket, station: Station) {
  for (const unit of station.units) {
    for (const { id } of kindOf(station, unit).ports) {
      const ring = ringAt(station, { unit: unit.id, port: id });
      if (ring === undefined) continue;
      const isHere = (end: PortRef) => end.unit === unit.id && end.port === id;
      const plugs = station.cables.flatMap(({ a, b }) => [a, b].filter(isHere)).length;
      fill(basket, 'ring', `colour ring, ${ringName(ring)}`, 1 + plugs, unit.name);
    }
  }
}
