import { Fragment } from 'react';
import type { Cable } from '../../../core/index.ts';
import { ofAnyAge } from '../../store/computed.ts';
import { useHookup } from '../../store/current.ts';
import { useResults, useStation, useView } from '../../store/use-store.ts';
import { OldFigure } from '../../widgets/OldFigure.tsx';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { badgeOf } from '../cards/badge-of.ts';
import type { Point } from '../routing/geometry.ts';
import { Flag } from './Flag.tsx';
import { flagSpots, flagWidth } from './flags.ts';
import { pillSpot } from './pill-spot.ts';

interface Props {
  cable: Cable;
  route: Point[];
  away: boolean;
  selected: boolean;
  pill: string;
  hot: boolean;
}

const at = ({ x, y }: Point) => ({ transform: `translate(-50%, -50%) translate(${x}px, ${y}px)` });

/** What lies on a cable: a flag at both ends, a badge where something is wrong with it, and what it carries. */
export function CableFlags({ cable, route, away, selected, pill, hot }: Props) {
  const hookup = useHookup().id;
  const badge = useResults((r) => (away ? undefined : badgeOf(ofAnyAge(r), hookup, cable.id)));
  const layer = useView((v) => v.stage === 'draw' || v.stage === 'check');
  const width = flagWidth(cable.number);
  const covered = useStation(
    (s) =>
      away && s.cables.some((c) => c.id !== cable.id && sharesPort(c, cable) && (c.hookups?.includes(hookup) ?? true)),
  );
  const spots = covered ? [] : flagSpots(route, width);
  const classes = ['flag', away ? 'away' : '', selected ? 'selected' : ''].join(' ');
  return (
    <Fragment>
      {spots.map((spot, i) => (
        <Flag
          // Not by its place: while a unit is dragged its flags move, and none has to be made anew.
          key={endOf(spots, i)}
          cable={cable}
          end={endOf(spots, i)}
          otherEnd={(spots.length === 2 && i === 0 ? route.at(-1) : route[0]) ?? spot}
          className={classes}
          style={{ ...at(spot), width }}
        />
      ))}
      {badge && layer && spots[0] && (
        <span className="cable-badge" style={at({ x: spots[0].x, y: spots[0].y - 15 })}>
          <SeverityShape severity={badge.severity} count={badge.count} size={18} />
        </span>
      )}
      {pill && (
        <span className={`pill ${hot ? 'hot' : ''}`} style={at(pillSpot(route, spots))}>
          <OldFigure />
          {pill}
        </span>
      )}
    </Fragment>
  );
}

const endOf = (spots: readonly Point[], i: number) => (spots.length === 2 && i === 0 ? 'a' : 'b');

const sharesPort = (one: Cable, other: Cable): boolean =>
  [one.a, one.b].some((p) => [other.a, other.b].some((q) => p.unit === q.unit && p.port === q.port));
