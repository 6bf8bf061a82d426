import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Station } from '../../core/index.ts';
import { currentStation } from '../store/document.ts';
import { cardsOf, layoutOf, nowhere, type Positions } from './layout.ts';
import { type Guide, guidesOf, type Pull, pullOf } from './paper/guides.ts';
import type { Point } from './routing/geometry.ts';
import { findHops, type Hop, keptHops } from './routing/hops.ts';
import { keptLines, keptRoutes, type Layout } from './routing/kept-routes.ts';
import { routeCables } from './routing/route-cables.ts';
import { simpleWay } from './routing/simple-way.ts';

/** What the drawing works out or does for the moment; nothing of it is in the document. */
export interface DrawingState {
  /** Units that are being dragged, and where they are now. */
  readonly moved: Positions;
  /** Notes and zones that are being resized, and their sizes now. */
  readonly resized: ReadonlyMap<string, Size>;
  /** What a unit that is being dragged is in line with. */
  readonly guides: readonly Guide[];
  /** An end of a cable that is being pulled off its port, and where its other end is. */
  readonly pulled: Guide | null;
  readonly routes: ReadonlyMap<string, Point[]>;
  readonly hops: ReadonlyMap<string, Hop[]>;
  /** Units and cables that are pointed out for a moment, by id. */
  readonly pulsing: ReadonlySet<string>;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

const noGuides: readonly Guide[] = [];

export const drawingStore = createStore<DrawingState>(() => ({
  moved: nowhere,
  resized: new Map(),
  guides: noGuides,
  pulled: null,
  routes: new Map(),
  hops: new Map(),
  pulsing: new Set(),
}));

const { getState, setState } = drawingStore;

export const useDrawing = <T>(pick: (state: DrawingState) => T): T => useStore(drawingStore, pick);

/** Sets units, notes and zones aside while they are dragged. One unit alone snaps to where a cable of its runs straight. */
export function dragUnits(moves: readonly { id: string; position: Point }[]) {
  const [first] = moves;
  const alone = moves.length === 1 && first ? first : undefined;
  const moved = new Map([...getState().moved, ...moves.map((m) => [m.id, m.position] as const)]);
  if (!alone) return setState({ moved, guides: noGuides });
  const station = currentStation();
  const pull = pullOf(pullsOf(station, moved, alone.id));
  moved.set(alone.id, { x: alone.position.x + pull.x, y: alone.position.y + pull.y });
  const cards = cardsOf(station, moved);
  const card = cards.find((c) => c.id === alone.id);
  setState({ moved, guides: card ? guidesOf(card, cards) : noGuides });
}

/** The cables of a unit with where their ends would be. */
function pullsOf(station: Station, moved: Positions, unit: string): Pull[] {
  const cables = station.cables.filter(({ a, b }) => (a.unit === unit) !== (b.unit === unit));
  const ends = new Map(layoutOf({ ...station, cables }, moved).requests.map((r) => [r.id, r]));
  return cables.flatMap(({ id, a }) => {
    const request = ends.get(id);
    if (!request) return [];
    const [own, other] = a.unit === unit ? [request.a, request.b] : [request.b, request.a];
    const across = [own, other].map(({ side }) => side === 'left' || side === 'right');
    return [{ own, other, way: across[0] !== across[1] ? 'bent' : across[0] ? 'across' : 'down' }];
  });
}

/** Where a unit, note or zone is that was being dragged; undefined for one that was not. */
export const draggedTo = (id: string): Point | undefined => getState().moved.get(id);

export const pullCable = (pulled: Guide | null) => setState({ pulled });

export const resizeMark = (id: string, size: Size) => setState({ resized: new Map([[id, size]]) });

export const endDrag = () => setState({ moved: nowhere, resized: new Map(), guides: noGuides });

/** Up to so many cables all are routed anew after an edit: each then has the best lane there is. */
const fewCables = 50;
let last: Layout = { cards: [], requests: [] };
/** How documents were drawn: what undo and redo bring back is there at once, and as it was. */
const drawn = new WeakMap<Station, Pick<DrawingState, 'routes' | 'hops'>>();
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
  if (unchanged && dragging) return;
  const known = dragging ? undefined : drawn.get(station);
  if (known) {
    hurried.clear();
    return setState(known);
  }
  if (unchanged && hurried.size === 0) {
    drawn.set(station, { routes: before.routes, hops: before.hops });
    return;
  }
  const staying = new Map([...kept].filter(([id]) => dragging || !hurried.has(id)));
  if (dragging) for (const { id } of layout.requests) if (!kept.has(id)) hurried.add(id);
  if (!dragging) hurried.clear();
  const all = !dragging && layout.requests.length <= fewCables;
  const found = routeCables(layout.cards, layout.requests, all ? undefined : staying, dragging);
  const routes = keptLines(before.routes, found);
  const hops = keptHops(before.hops, findHops(routes));
  if (!dragging) drawn.set(station, { routes, hops });
  setState({ routes, hops });
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
