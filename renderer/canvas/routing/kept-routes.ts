import { isSameLine, type Point, type Rect } from './geometry.ts';
import { clearPx } from './grid.ts';
import type { RouteRequest } from './route-cables.ts';

/** All cards and cables of a drawing, as the router gets them. */
export interface Layout {
  readonly cards: readonly Rect[];
  readonly requests: readonly RouteRequest[];
}

/**
 * The routes that may stay when a drawing changes: of cables whose ends are where they were, and that no new or moved
 * card lies on. All of them, and no more, where nothing changed.
 */
export function keptRoutes(
  before: Layout,
  after: Layout,
  routes: ReadonlyMap<string, Point[]>,
): ReadonlyMap<string, Point[]> {
  const oldCards = new Set(before.cards.map(textOf));
  const newCards = after.cards.filter((card) => !oldCards.has(textOf(card)));
  const oldRequests = new Map(before.requests.map((r) => [r.id, requestText(r)]));
  const kept = new Map<string, Point[]>();
  for (const request of after.requests) {
    const route = routes.get(request.id);
    if (!route || oldRequests.get(request.id) !== requestText(request)) continue;
    if (!newCards.some((card) => crosses(route, card))) kept.set(request.id, route);
  }
  return kept;
}

/** The new routes, and of cables that go where they went the old ones: then nothing of them is drawn anew. */
export function keptLines(before: ReadonlyMap<string, Point[]>, after: ReadonlyMap<string, Point[]>) {
  return new Map(
    [...after].map(([id, route]) => {
      const old = before.get(id);
      return [id, old && isSameLine(old, route) ? old : route];
    }),
  );
}

const textOf = ({ x, y, width, height }: Rect): string => `${x} ${y} ${width} ${height}`;

const requestText = ({ number, a, b }: RouteRequest): string => [number, a.x, a.y, a.side, b.x, b.y, b.side].join(' ');

const crosses = (route: readonly Point[], card: Rect): boolean =>
  route.some((q, i) => {
    const p = route[i - 1];
    return (
      p !== undefined &&
      Math.max(p.x, q.x) > card.x - clearPx &&
      Math.min(p.x, q.x) < card.x + card.width + clearPx &&
      Math.max(p.y, q.y) > card.y - clearPx &&
      Math.min(p.y, q.y) < card.y + card.height + clearPx
    );
  });
