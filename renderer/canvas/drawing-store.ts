import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Station } from '../../core/index.ts';
import { keptRoutes, type Layout } from './kept-routes.ts';
import { layoutOf, type Positions } from './layout.ts';
import { routeCables } from './route.ts';
import type { Point } from './routing/geometry.ts';
import { findHops, type Hop } from './routing/hops.ts';

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

/** Routes the cables that an edit touches, or all of them where they are few; while units are dragged only their own. */
export function routeStation(station: Station, moved: Positions) {
  const layout = layoutOf(station, moved);
  const before = getState().routes;
  const kept = keptRoutes(last, layout, before);
  const unchanged = kept.size === layout.requests.length && before.size === kept.size;
  last = layout;
  if (unchanged && !catchUp) return;
  const all = moved.size === 0 && layout.requests.length <= fewCables;
  catchUp = moved.size > 0;
  const routes = routeCables(layout.cards, layout.requests, all ? undefined : kept);
  setState({ routes, hops: findHops(routes) });
}

/** Set while a drag leaves other cables as they are: its end routes them, too. */
let catchUp = false;

/** Points units and cables out for a moment. */
export function pulse(ids: readonly string[]) {
  const pulsing = new Set(ids);
  setState({ pulsing });
  setTimeout(() => {
    if (getState().pulsing === pulsing) setState({ pulsing: new Set() });
  }, 1800);
}
