import type { Mark, Station } from '../../../core/index.ts';
import { gridPx } from '../cards/card-size.ts';
import { boundsOf, type Rect } from '../routing/geometry.ts';
import type { Card } from './arrange.ts';

/** Free paper between a zone's edge and the units in it; above them there is its name, too. */
const marginPx = 3 * gridPx;

/** The zone that fits around some cards; null around none. */
export function zoneAround(cards: readonly Card[]): Rect | null {
  const bounds = boundsOf(cards);
  if (!bounds) return null;
  const { x, y, width, height } = bounds;
  return { x: x - marginPx, y: y - marginPx, width: width + 2 * marginPx, height: height + 2 * marginPx };
}

/** The units in each zone, by the middles of their cards; where zones overlap a unit is in the smaller one. */
export function unitsInZones(
  station: Station,
  cards: readonly Card[],
): { readonly zone: Mark; readonly units: string[] }[] {
  const size = ({ width, height }: Mark) => width * height;
  const zones = (station.marks ?? []).filter((m) => m.type === 'zone').sort((a, b) => size(a) - size(b));
  const found = zones.map((zone) => ({ zone, units: [] as string[] }));
  for (const card of cards) found.find(({ zone }) => isIn(zone, card))?.units.push(card.id);
  return found.filter(({ units }) => units.length > 0);
}

function isIn({ position, width, height }: Mark, card: Card): boolean {
  const [x, y] = [card.x + card.width / 2, card.y + card.height / 2];
  return x >= position.x && x <= position.x + width && y >= position.y && y <= position.y + height;
}
