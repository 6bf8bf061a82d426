import type { MeasureText } from '../../../core/index.ts';

export const flagFont = '"Atkinson Hyperlegible Next", "Segoe UI", "Helvetica Neue", Arial, sans-serif';
const samplePx = 100;

/** The width of a text as the browser draws it, in its boldest weight so that no line comes out wider. */
export function textMeasure(): MeasureText {
  const drawing = document.createElement('canvas').getContext('2d');
  const known = new Map<string, number>();
  return (text, sizeMm) => {
    let perMm = known.get(text);
    if (perMm === undefined) {
      if (drawing) drawing.font = `700 ${samplePx}px ${flagFont}`;
      perMm = (drawing?.measureText(text).width ?? text.length * samplePx) / samplePx;
      known.set(text, perMm);
    }
    return perMm * sizeMm;
  };
}
