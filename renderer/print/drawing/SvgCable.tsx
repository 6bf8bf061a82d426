import { type Cable, classOf, type Station } from '../../../core/index.ts';
import { flagHeight, flagSpots, flagWidth } from '../../canvas/cables/flags.ts';
import { pathOf } from '../../canvas/cables/path-of.ts';
import { Strokes } from '../../canvas/cables/Strokes.tsx';
import type { Point } from '../../canvas/routing/geometry.ts';
import type { Hop } from '../../canvas/routing/hops.ts';

interface CableProps {
  station: Station;
  cable: Cable;
  route: readonly Point[];
  hops: readonly Hop[];
  away: boolean;
}

/** A cable on paper, as the thing that it is. */
export function SvgCable({ station, cable, route, hops, away }: CableProps) {
  const kind = classOf(station, cable);
  return (
    <g className={`cable c-${kind} ${away ? 'away' : ''}`}>
      <Strokes kind={kind} path={pathOf(route, hops)} route={route} hops={hops} />
    </g>
  );
}

interface FlagsProps {
  cable: Cable;
  route: readonly Point[];
  away: boolean;
}

/** The flags at both ends of a cable, with its number. */
export function SvgFlags({ cable, route, away }: FlagsProps) {
  const width = flagWidth(cable.number);
  return (
    <g className={away ? 's-flag away' : 's-flag'}>
      {flagSpots(route, width).map(({ x, y }) => (
        <g key={`${x} ${y}`}>
          <rect x={x - width / 2} y={y - flagHeight / 2} width={width} height={flagHeight} rx="2.5" />
          <text x={x} y={y + 4}>
            {cable.number}
          </text>
        </g>
      ))}
    </g>
  );
}
