import { useMemo } from 'react';
import { hookupsOf } from '../../../core/index.ts';
import { useHookup } from '../../store/current.ts';
import { useStation } from '../../store/use-store.ts';
import { layOutForPaper, StationSvg } from '../drawing/StationSvg.tsx';
import { type Room, type Tiling, tileDrawing } from '../drawing/tile-drawing.ts';
import type { PaperSize } from './book-store.ts';

/** Inside the margins of a page on its side, under the heading and over a line of words. */
const rooms: Record<PaperSize, Room> = {
  a4: { widthMm: 268, heightMm: 146 },
  letter: { widthMm: 250, heightMm: 152 },
};

const mm = (value: number): string => `${Math.round(value * 100) / 100}mm`;

/** The drawing on one page, or on several that overlap, with a page first that shows which is where. */
export function BookDrawing({ paper }: { paper: PaperSize }) {
  const station = useStation();
  const hookup = useHookup();
  const drawing = useMemo(() => layOutForPaper(station), [station]);
  const room = rooms[paper];
  const { scale, tiles } = tileDrawing(drawing.bounds, room);
  const others = hookupsOf(station).length > 1;
  const shown = others ? `Plugged in for “${hookup.name}”; what is plugged in otherwise is faint.` : '';
  return (
    <>
      {tiles.length > 1 && (
        <figure className="book-tile">
          <Overview drawing={drawing} tiling={{ scale, tiles }} room={room} />
          <figcaption>Which page shows what. {shown}</figcaption>
        </figure>
      )}
      {tiles.map(({ name, view }) => (
        <figure key={name} className="book-tile">
          <StationSvg
            drawing={drawing}
            hookup={hookup}
            view={view}
            width={mm(view.width * scale)}
            height={mm(view.height * scale)}
            label={name ? `Part ${name} of the drawing` : 'The drawing'}
          />
          <figcaption>{name ? `${name}, overlapping its neighbours` : shown}</figcaption>
        </figure>
      ))}
    </>
  );
}

interface OverviewProps {
  drawing: ReturnType<typeof layOutForPaper>;
  tiling: Tiling;
  room: Room;
}

/** The whole drawing, small, with the pages over it. */
function Overview({ drawing, tiling: { tiles }, room }: OverviewProps) {
  const { bounds } = drawing;
  const scale = Math.min(room.widthMm / bounds.width, room.heightMm / bounds.height);
  const size = { width: mm(bounds.width * scale), height: mm(bounds.height * scale) };
  return (
    <div className="book-overview" style={size}>
      <StationSvg drawing={drawing} {...size} label="The whole drawing" />
      <svg viewBox={`${bounds.x} ${bounds.y} ${bounds.width} ${bounds.height}`} {...size} aria-hidden="true">
        {tiles.map(({ name, view }) => (
          <g key={name}>
            <rect x={view.x} y={view.y} width={view.width} height={view.height} />
            <text x={view.x + view.width / 2} y={view.y + view.height / 2} fontSize={view.height / 4}>
              {name}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}
