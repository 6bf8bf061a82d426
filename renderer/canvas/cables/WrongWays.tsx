import { ViewportPortal } from '@xyflow/react';
import { useMemo } from 'react';
import { useStation, useView } from '../../store/use-store.ts';
import type { Supposed } from '../../store/view.ts';
import { useDrawing } from '../drawing-store.ts';
import type { Point } from '../routing/geometry.ts';
import { pathOf } from './path-of.ts';
import { portSpots, wrongWays } from './wrong-ways.ts';

/** How a mix-up that is pointed at would lie, and the ports that suffer by it. */
export function WrongWays() {
  const supposed = useView((v) => v.supposed);
  return supposed && <Shown supposed={supposed} />;
}

function Shown({ supposed }: { supposed: Supposed }) {
  const station = useStation();
  const routes = useDrawing((d) => d.routes);
  const ways = useMemo(() => wrongWays(station, supposed, routes), [station, supposed, routes]);
  const hurt = useMemo(() => portSpots(station, supposed.hurt), [station, supposed]);
  return (
    <ViewportPortal>
      <svg className={`wrong-ways ${supposed.severity}`} aria-hidden="true">
        {ways.map(({ cable, route, ends }) => (
          <g key={cable}>
            <path className="wrong-halo" d={pathOf(route)} />
            <path className="wrong-way" d={pathOf(route)} />
            {ends.map((end) => (
              <path key={`${end.x} ${end.y}`} className="wrong-end" d={crossAt(end)} />
            ))}
          </g>
        ))}
        {hurt.map(({ x, y }) => (
          <g key={`${x} ${y}`} className="hurt" transform={`translate(${x} ${y})`}>
            <path d="M0 -19L19 0L0 19L-19 0Z" />
            <path className="hurt-sign" d="M0 -29L10 -11H-10Z" />
            <text y="-14" textAnchor="middle">
              !
            </text>
          </g>
        ))}
      </svg>
    </ViewportPortal>
  );
}

/** A cross over where a plug should not be. */
const crossAt = ({ x, y }: Point): string => `M${x - 7} ${y - 7}l14 14M${x + 7} ${y - 7}l-14 14`;
