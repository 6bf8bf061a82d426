import type { Point, Rect } from '../routing/geometry.ts';
import type { Card, Move } from './arrange.ts';

/** Room for cables between cards. */
const apartPx = 36;

/**
 * A layout set among cards that stay: shifted so that the cards that are in both lie as near as they can, or where
 * nothing of the layout stays, to where its cards were; then each card that would lie on one that stays goes down until
 * it is free. Cards that are not free are not moved.
 */
export function settle(cards: readonly Card[], layout: readonly Move[], isFree: (id: string) => boolean): Move[] {
  const cardOf = new Map(cards.map((c) => [c.id, c]));
  const stay = cards.filter((c) => !isFree(c.id));
  const inBoth = layout.filter((m) => !isFree(m.id));
  const shift = inBoth.length > 0 ? meanShift(inBoth, cardOf) : cornerShift(layout, cardOf);
  const placed: Rect[] = [...stay];
  const free = layout.filter((m) => isFree(m.id)).sort((a, b) => a.position.y - b.position.y);
  return free.map(({ id, position }) => {
    const card = cardOf.get(id);
    const at = { x: position.x + shift.x, y: position.y + shift.y };
    if (!card) return { id, position: at };
    let rect: Rect = { ...card, ...at };
    // The ones laid out together don't overlap; those that stay may be in the way.
    for (let hit = blocker(rect, placed); hit; hit = blocker(rect, placed))
      rect = { ...rect, y: hit.y + hit.height + apartPx };
    placed.push(rect);
    return { id, position: { x: rect.x, y: rect.y } };
  });
}

function meanShift(layout: readonly Move[], cardOf: ReadonlyMap<string, Card>): Point {
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  return {
    x: mean(layout.map(({ id, position }) => (cardOf.get(id)?.x ?? 0) - position.x)),
    y: mean(layout.map(({ id, position }) => (cardOf.get(id)?.y ?? 0) - position.y)),
  };
}

function cornerShift(layout: readonly Move[], cardOf: ReadonlyMap<string, Card>): Point {
  const before = layout.flatMap(({ id }) => cardOf.get(id) ?? []);
  const corner = (values: readonly number[]) => (values.length === 0 ? 0 : Math.min(...values));
  return {
    x: corner(before.map((c) => c.x)) - corner(layout.map((m) => m.position.x)),
    y: corner(before.map((c) => c.y)) - corner(layout.map((m) => m.position.y)),
  };
}

const blocker = (rect: Rect, placed: readonly Rect[]): Rect | undefined =>
  placed.find(
    (p) =>
      rect.x < p.x + p.width + apartPx &&
      p.x < rect.x + rect.width + apartPx &&
      rect.y < p.y + p.height + apartPx &&
      p.y < rect.y + rect.height + apartPx,
  );
