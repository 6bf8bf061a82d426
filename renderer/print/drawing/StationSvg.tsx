import type { Hookup, Station } from '../../../core/index.ts';
import { drawnKind } from '../../../core/index.ts';
import { layoutOf } from '../../canvas/layout.ts';
import { boundsOf, type Rect } from '../../canvas/routing/geometry.ts';
import { findHops, noHops } from '../../canvas/routing/hops.ts';
import { routeCables } from '../../canvas/routing/route-cables.ts';
import { SvgCable, SvgFlags } from './SvgCable.tsx';
import { SvgCard } from './SvgCard.tsx';
import './station-svg.css';

/** A drawing worked out for paper: what to draw and what it covers. */
export type PaperDrawing = ReturnType<typeof layOutForPaper>;

/** Free paper around everything. */
const marginPx = 14;
/** Routes all cables of a station with care, as nothing on paper moves. */
export function layOutForPaper(station: Station) {
  const { cards, requests } = layoutOf(station, new Map());
  const routes = routeCables(cards, requests);
  const marks = (station.marks ?? []).map(({ position, width, height }) => ({ ...position, width, height }));
  const points = [...routes.values()].flat().map(({ x, y }) => ({ x, y, width: 0, height: 0 }));
  const inner = boundsOf([...cards, ...marks, ...points]) ?? { x: 0, y: 0, width: 100, height: 60 };
  const bounds: Rect = {
    x: inner.x - marginPx,
    y: inner.y - marginPx,
    width: inner.width + 2 * marginPx,
    height: inner.height + 2 * marginPx,
  };
  return { station, cards: new Map(cards.map((c) => [c.id, c])), routes, hops: findHops(routes), bounds };
}

interface Props {
  drawing: PaperDrawing;
  /** Cables that are not plugged in for it are drawn faint; without one all are drawn alike. */
  hookup?: Hookup;
  /** The part of the drawing that is shown; all of it if not given. */
  view?: Rect;
  /** With a unit of its own: `120mm`. */
  width: string;
  height: string;
  label: string;
}

/** The station as a picture of lines and letters: the same routes as on the screen, in the colours of paper. */
export function StationSvg({ drawing, hookup, view, width, height, label }: Props) {
  const { station, cards, routes, hops, bounds } = drawing;
  const shown = view ?? bounds;
  // A page of several shows a part: what is elsewhere would only make the paper heavy.
  const units = station.units.filter(({ id }) => overlaps(cards.get(id), shown));
  const cables = station.cables.flatMap((cable) => {
    const route = routes.get(cable.id);
    return route && overlaps(boundsOf(route.map(({ x, y }) => ({ x, y, width: 0, height: 0 }))), shown)
      ? [{ cable, route }]
      : [];
  });
  const isAway = (hookups: readonly string[] | undefined) =>
    hookup !== undefined && hookups !== undefined && !hookups.includes(hookup.id);
  return (
    <svg
      className="station-svg"
      viewBox={`${shown.x} ${shown.y} ${shown.width} ${shown.height}`}
      width={width}
      height={height}
      role="img"
      aria-label={label}
      xmlns="http://www.w3.org/2000/svg"
    >
      {(station.marks ?? []).map(({ id, type, position, text, width: markWidth, height: markHeight }) => (
        <g key={id} className={`s-mark s-${type}`}>
          <rect x={position.x} y={position.y} width={markWidth} height={markHeight} rx={type === 'zone' ? 12 : 0} />
          {text.split('\n').map((line, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines of a text have no other name
            <text key={i} x={position.x + 12} y={position.y + 20 + 17 * i}>
              {line}
            </text>
          ))}
        </g>
      ))}
      {cables.map(({ cable, route }) => {
        const props = { station, cable, route, hops: hops.get(cable.id) ?? noHops, away: isAway(cable.hookups) };
        return <SvgCable key={cable.id} {...props} />;
      })}
      {units.map((unit) => {
        const kind = drawnKind(station.kinds, unit);
        return kind && <SvgCard key={unit.id} station={station} unit={unit} kind={kind} />;
      })}
      {cables.map(({ cable, route }) => (
        <SvgFlags key={cable.id} cable={cable} route={route} away={isAway(cable.hookups)} />
      ))}
    </svg>
  );
}

/** Faces, badges and flags reach over their card's or line's edge. */
const reachPx = 24;

function overlaps(rect: Rect | null | undefined, view: Rect): boolean {
  if (!rect) return false;
  return (
    rect.x - reachPx < view.x + view.width &&
    view.x < rect.x + rect.width + reachPx &&
    rect.y - reachPx < view.y + view.height &&
    view.y < rect.y + rect.height + reachPx
  );
}
