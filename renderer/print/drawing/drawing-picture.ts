import { createElement } from 'react';
import { currentHookup } from '../../store/current.ts';
import { currentStation } from '../../store/document.ts';
import { viewStore } from '../../store/view.ts';
import { layOutForPaper, StationSvg } from './StationSvg.tsx';
import css from './station-svg.css?inline';

/** Pixels of the picture for each pixel of the drawing; fewer where the picture would be larger than most programs open. */
const sharp = 2;
const mostPx = 8000;

/** The drawing as the text of an SVG file that needs nothing else: its colours are written into it. */
export async function svgText(): Promise<string> {
  // Only those who export need it.
  const { renderToStaticMarkup } = await import('react-dom/server');
  const station = currentStation();
  const drawing = layOutForPaper(station);
  const { width, height } = drawing.bounds;
  const hookup = currentHookup(station, viewStore.getState());
  const size = { width: `${width}`, height: `${height}` };
  const svg = renderToStaticMarkup(createElement(StationSvg, { drawing, hookup, ...size, label: station.title }));
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg.replace('>', `><style>${plainCss(css)}</style>`)}\n`;
}

/** Style rules with their variables put in: not every program that opens SVG knows variables. */
function plainCss(rules: string): string {
  const values = new Map(
    [...rules.matchAll(/(--[\w-]+):\s*([^;}]+)[;}]/g)].map((m) => [m[1] ?? '', (m[2] ?? '').trim()]),
  );
  return rules.replace(/var\((--[\w-]+)\)/g, (whole, name: string) => values.get(name) ?? whole);
}

/** The drawing as a picture of pixels: a PNG file in base64. */
export async function pngBase64(): Promise<string> {
  const { bounds } = layOutForPaper(currentStation());
  const scale = Math.min(sharp, mostPx / bounds.width, mostPx / bounds.height);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(await svgText())}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(bounds.width * scale);
  canvas.height = Math.round(bounds.height * scale);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL('image/png').split(',')[1] ?? '';
}
