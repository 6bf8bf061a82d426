import { edit, type Place, type PortRef, type Station } from '../../../core/index.ts';
import type { Supposed } from '../../store/view.ts';
import { layoutOf, nowhere } from '../layout.ts';
import type { Point } from '../routing/geometry.ts';
import { simpleWay } from '../routing/simple-way.ts';

export interface WrongWay {
  readonly cable: string;
  readonly route: readonly Point[];
  /** Where it ends and should not; none where it ends as it is drawn. */
  readonly ends: readonly Point[];
}

/**
 * How the cables of something supposed would lie: straight there, over whatever is in the way. A cable of which only
 * the inside changes lies as it is drawn (`routes`).
 */
export function wrongWays(
  station: Station,
  { cables: ids, change }: Supposed,
  routes: ReadonlyMap<string, readonly Point[]>,
): WrongWay[] {
  if (!change) return [];
  const before = new Map(station.cables.map((c) => [c.id, c]));
  const cables = edit(station, change).cables.filter((c) => ids.includes(c.id));
  const ways = new Map(layoutOf({ ...station, cables }, nowhere).requests.map((r) => [r.id, r]));
  return cables.flatMap((cable) => {
    const way = ways.get(cable.id);
    const was = before.get(cable.id);
    if (!way || !was) return [];
    const ends = (['a', 'b'] as const).filter((end) => !isSame(cable[end], was[end]));
    const drawn = routes.get(cable.id);
    const route = ends.length === 0 && drawn ? drawn : simpleWay(way.a, way.b);
    return [{ cable: cable.id, route, ends: ends.map((end) => ({ x: way[end].x, y: way[end].y })) }];
  });
}

const isSame = (one: PortRef, other: PortRef): boolean => one.unit === other.unit && one.port === other.port;

/** Where the ports among some places are on the paper, each once. */
export function portSpots(station: Station, places: readonly Place[]): Point[] {
  const refs = places.flatMap((place): PortRef[] => {
    if ('unit' in place) return place.port === undefined ? [] : [{ unit: place.unit, port: place.port }];
    return [];
  });
  const [first] = station.cables;
  if (!first) return [];
  // A port's place is that of a cable's end in it.
  const probes = refs.map((ref, i) => ({ ...first, id: `${i}`, a: ref, b: ref }));
  const spots = layoutOf({ ...station, cables: probes }, nowhere).requests.map(({ a: { x, y } }) => ({ x, y }));
  return spots.filter((p, i) => spots.findIndex((q) => q.x === p.x && q.y === p.y) === i);
}
