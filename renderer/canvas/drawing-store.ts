import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Station } from '../../core/index.ts';
import { keptRoutes, type Layout } from './kept-routes.ts';
import { layoutOf, type Positions } from './layout.ts';
import { routeCables } from './route.ts';
import type { Point } from './routing/geometry.ts';
import { findHops, type Hop, keptHops } from './routing/hops.ts';
import { simpleWay } from './routing/simple-way.ts';

/** What the drawing works out or does for the moment; nothing of it is in the document. */
export interface DrawingState {
  /** Units that are being dragged, and where they are now. */
  readonly moved: Positions;
  readonly routes: ReadonlyMap<string, Point[]>;
  readonly hops: ReadonlyMap<string, Hop[]>;
  /** Units and cables that are pointed out for a moment, by id. */
  readonly pulsing: ReadonlySet<string>;
}

const nowhere: Positions = new Map();

export const drawingStore = createStore<DrawingState>(() => ({
  moved: nowhere,
  routes: new Map(),
  hops: new Map(),
  pulsing: new Set(),
}));

const { getState, setState } = drawingStore;

export const useDrawing = <T>(pick: (state: DrawingState) => T): T => useStore(drawingStore, pick);

/** Sets units aside while they are dragged. */
export function dragUnits(moves: readonly { id: string; position: Point }[]) {
  setState({ moved: new Map([...getState().moved, ...moves.map((m) => [m.id, m.position] as const)]) });
}

export const endDrag = () => setState({ moved: nowhere });

/** Up to so many cables all are routed anew after an edit: each then has the best lane there is. */
const fewCables = 50;
let last: Layout = { cards: [], requests: [] };
/** Cables that go in a hurry while a drag lasts: its end routes them with care, and where they are few all others, too. */
const hurried = new Set<string>();

/** Routes the cables that an edit touches, or all of them where they are few; while units are dragged only their own. */
export function routeStation(station: Station, moved: Positions) {
  const dragging = moved.size > 0;
  if (dragging && station.cables.length > fewCables) return followDrag(station, moved);
  const layout = layoutOf(station, moved);
  const before = getState();
  const kept = keptRoutes(last, layout, before.routes);
  const unchanged = kept.size === layout.requests.length && before.routes.size === kept.size;
  last = layout;
  if (unchanged && (dragging || hurried.size === 0)) return;
  const staying = new Map([...kept].filter(([id]) => dragging || !hurried.has(id)));
  if (dragging) for (const { id } of layout.requests) if (!kept.has(id)) hurried.add(id);
  if (!dragging) hurried.clear();
  const all = !dragging && layout.requests.length <= fewCables;
  const routes = routeCables(layout.cards, layout.requests, all ? undefined : staying, dragging);
  setState({ routes, hops: keptHops(before.hops, findHops(routes)) });
}

/** In a large drawing even a quick search would hold up the mouse: a dragged unit's cables follow over all that is there. */
function followDrag(station: Station, moved: Positions) {
  const cables = station.cables.filter((c) => moved.has(c.a.unit) || moved.has(c.b.unit));
  const { requests } = layoutOf({ ...station, cables }, moved);
  const { routes, hops } = getState();
  const [nextRoutes, nextHops] = [new Map(routes), new Map(hops)];
  for (const { id, a, b } of requests) {
    hurried.add(id);
    nextRoutes.set(id, simpleWay(a, b));
    nextHops.delete(id);
  }
  setState({ routes: nextRoutes, hops: nextHops });
}

/** Points units and cables out for a moment. */
export function pulse(ids: readonly string[]) {
  const pulsing = new Set(ids);
  setState({ pulsing });
  setTimeout(() => {
    if (getState().pulsing === pulsing) setState({ pulsing: new Set() });
  }, 1800);
}
