import { createElement } from 'react';
import { tell } from '../../app/questions.ts';
import { download } from '../../shell/browser-files.ts';
import { suggestedName } from '../../shell/files.ts';
import { currentHookup } from '../../store/current.ts';
import { currentStation } from '../../store/document.ts';
import { viewStore } from '../../store/view.ts';
import { layOutForPaper, StationSvg } from './StationSvg.tsx';
import css from './station-svg.css?inline';

/** Pixels of the picture for each pixel of the drawing; fewer where the picture would be larger than most programs open. */
const sharp = 2;
const mostPx = 8000;

/** The drawing as an SVG file that needs nothing else: its colours are written into it. */
export async function exportSvg() {
  await hand('.svg', await svgText(), 'utf8');
}

/** The drawing as a picture of pixels. */
export async function exportPng() {
  const { bounds } = layOutForPaper(currentStation());
  const scale = Math.min(sharp, mostPx / bounds.width, mostPx / bounds.height);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(await svgText())}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(bounds.width * scale);
  canvas.height = Math.round(bounds.height * scale);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  await hand('.png', canvas.toDataURL('image/png').split(',')[1] ?? '', 'base64');
}

async function svgText(): Promise<string> {
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

async function hand(ending: string, content: string, encoding: 'utf8' | 'base64') {
  const name = suggestedName(currentStation().title).replace('.station.json', ending);
  const bridge = window.stationwright;
  if (!bridge) {
    const bytes = encoding === 'base64' ? Uint8Array.from(atob(content), (c) => c.charCodeAt(0)) : content;
    return download(bytes, name);
  }
  const saved = await bridge.exportFile({ suggestedName: name, content, encoding });
  if (saved && 'error' in saved) await tell('Not saved', saved.error);
}
