import type { Point } from '../routing/geometry.ts';
import type { Hop } from '../routing/hops.ts';
import { pathOf } from './path-of.ts';

interface StrokesProps {
  kind: string;
  path: string;
  route: readonly Point[];
  hops: readonly Hop[];
}

/** What a cable is drawn as: two conductors, a sheath with its core, or a dash of its class. */
export function Strokes({ kind, path, route, hops }: StrokesProps) {
  if (kind === 'dc') {
    // Plus runs above minus (or left of it) whichever way the cable was drawn.
    const [first, second] = route;
    const backward = first && second && (second.x < first.x || second.y > first.y);
    const offset = backward ? -1.7 : 1.7;
    return (
      <>
        <path d={pathOf(route, hops, offset)} className="c-plus" />
        <path d={pathOf(route, hops, -offset)} className="c-minus" />
      </>
    );
  }
  if (kind === 'rf' || kind === 'earth') {
    return (
      <>
        <path d={path} className="c-outer" />
        <path d={path} className="c-inner" />
      </>
    );
  }
  return <path d={path} className="c-line" />;
}
