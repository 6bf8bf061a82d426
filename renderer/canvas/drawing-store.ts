import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Station } from '../../core/index.ts';
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

/** Routes every cable anew; while units are dragged only their own cables. */
export function routeStation(station: Station, moved: Positions) {
  const { cards, requests } = layoutOf(station, moved);
  const kept = new Map<string, Point[]>();
  if (moved.size > 0) {
    for (const { id, a, b } of station.cables) {
      const route = getState().routes.get(id);
      if (route && !moved.has(a.unit) && !moved.has(b.unit)) kept.set(id, route);
    }
  }
  const routes = routeCables(cards, requests, kept);
  setState({ routes, hops: findHops(routes) });
}

/** Points units and cables out for a moment. */
export function pulse(ids: readonly string[]) {
  const pulsing = new Set(ids);
  setState({ pulsing });
  setTimeout(() => {
    if (getState().pulsing === pulsing) setState({ pulsing: new Set() });
  }, 1800);
}
