import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { hookupsOf, type Station } from '../../core/index.ts';
import { layOutForPaper, StationSvg } from '../../renderer/print/drawing/StationSvg.tsx';

/** The drawing on paper as SVG, as it is exported, but for its style. */
export function pictureOf(station: Station): string {
  const drawing = layOutForPaper(station);
  const [hookup] = hookupsOf(station);
  const { width, height } = drawing.bounds;
  const size = { width: `${width}`, height: `${height}`, label: station.title };
  return renderToStaticMarkup(createElement(StationSvg, { drawing, ...(hookup && { hookup }), ...size }));
}
