import { adapters } from '../../catalog/adapters.ts';
import { neededAdapters } from '../../catalog/cables/cable-words.ts';
import { wiringOf } from '../../catalog/cables/wiring-of.ts';
import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { classOf, portName } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { ContactRole } from '../../station/schema/connector.ts';
import type { Cable, CableEnd, Station } from '../../station/schema/schema.ts';
import type { PortClass } from '../../station/schema/unit-kind.ts';
import { cableConductors } from '../cables/cable-conductors.ts';
import { holderName, orderedFuse } from '../ordered-fuse.ts';
import { type HeatShrink, heatShrinkFor } from './heat-shrink.ts';
import { isReadyMade } from './is-ready-made.ts';
import { cutLengthM, piecesOf } from './strip.ts';

/** One end of a cable to make. */
export interface MakeEnd {
  /** The unit and port where it goes. */
  readonly at: string;
  readonly plug: string;
  /** The plug's id among the station's connectors; empty where it is not known. */
  readonly connector: string;
  readonly pieces: number;
  /** Adapters that go on it, from the plug on. */
  readonly adapters: readonly string[];
}

/** One conductor, from contact to contact. */
export interface MakeWire {
  readonly from: string;
  readonly to: string;
  readonly what: ContactRole;
}

/** What one cable is made of, and how it is wired. */
export interface MakeRow {
  readonly id: string;
  readonly number: string;
  readonly class: PortClass;
  readonly kind: string;
  readonly conductors: string;
  readonly cutM: number;
  readonly ends: readonly [MakeEnd, MakeEnd];
  readonly fuse: { readonly name: string; readonly holder: string; readonly atM: number } | null;
  readonly heatShrink: HeatShrink;
  readonly flags: number;
  readonly wiring: readonly MakeWire[];
  /** No wiring of its own: contact to contact. */
  readonly oneToOne: boolean;
  /** Where its screen is joined, if not at both ends; else empty. */
  readonly screen: string;
  readonly status: NonNullable<Cable['status']>;
}

export interface MakeWish {
  /** Without the cables that are made or tested. */
  readonly leaveOutDone: boolean;
}

/** Whether a cable is still to be made or bought. */
export const isWanted = (cable: Cable, { leaveOutDone }: MakeWish): boolean =>
  !leaveOutDone || (cable.status ?? 'toMake') === 'toMake';

/** Every cable that is made by hand, once whatever hook-ups it is in, by number. */
export function whatToMake(station: Station, wish: MakeWish): MakeRow[] {
  return station.cables
    .filter((cable) => isWanted(cable, wish) && !isReadyMade(station, cable))
    .map((cable) => rowOf(station, cable))
    .sort((a, b) => asPeopleCount(a.number, b.number));
}

function rowOf(station: Station, cable: Cable): MakeRow {
  const kind = station.cableKinds[cable.kind];
  const plugs = [plugOf(station, cable, 'a'), plugOf(station, cable, 'b')];
  const { fuse, screenAt } = cable;
  return {
    id: cable.id,
    number: cable.number,
    class: classOf(station, cable),
    kind: kind?.name ?? cable.kind,
    conductors: kind ? cableConductors(kind) : '',
    cutM: cutLengthM(cable.lengthM, plugs),
    ends: [endOf(station, cable, 'a'), endOf(station, cable, 'b')],
    fuse: fuse ? { name: orderedFuse(fuse), holder: holderName(fuse.family), atM: fuse.atM } : null,
    heatShrink: heatShrinkFor(plugs, fuse !== undefined),
    flags: 2,
    wiring: coresToCut(station, cable),
    oneToOne: cable.wiring === undefined,
    screen: screenAt ? `joined at ${portName(station, cable[screenAt])} only` : '',
    status: cable.status ?? 'toMake',
  };
}

function endOf(station: Station, cable: Cable, end: CableEnd): MakeEnd {
  const plug = plugOf(station, cable, end);
  return {
    at: portName(station, cable[end]),
    plug: plug?.name ?? '?',
    connector: plug?.id ?? '',
    pieces: plug ? piecesOf(plug) : 0,
    adapters: adaptersAt(station, cable, end).map((id) => adapters[id]?.name ?? id),
  };
}

/** The adapters on an end of a cable, by id: those fitted, else those that it needs there. */
export const adaptersAt = (station: Station, cable: Cable, end: CableEnd): readonly string[] =>
  cable.adapters?.[end] ?? neededAdapters(station, cable, end) ?? [];

function coresToCut(station: Station, cable: Cable): MakeWire[] {
  const nameAt = (end: CableEnd, id: string) =>
    plugOf(station, cable, end)?.contacts.find((contact) => contact.id === id)?.name ?? id;
  return wiringOf(station, cable).map(({ a, b, role }) => ({
    from: nameAt('a', a),
    to: nameAt('b', b),
    what: role,
  }));
}
