import type { FlagPages } from '../../../core/index.ts';
import { MmPage } from './MmPage.tsx';

const rulerMm = 100;

/** A page that shows whether the printer keeps to size: the labels' outlines, and a ruler each way. */
export function FlagTestPage({ pages }: { pages: FlagPages }) {
  const { widthMm, heightMm, labels } = pages;
  const lengthX = Math.min(rulerMm, Math.floor((widthMm - 30) / 10) * 10);
  const lengthY = Math.min(rulerMm, Math.floor((heightMm - 30) / 10) * 10);
  const [x, y] = [15, 20];
  return (
    <MmPage widthMm={widthMm} heightMm={heightMm} label="Test page with rulers and the outlines of the labels">
      {labels.map((label) => (
        <rect key={`${label.x} ${label.y}`} className="label-outline" {...label} />
      ))}
      <rect x={x - 3} y={y - 8} width={lengthX + 8} height={lengthY + 12} className="ruler-ground" />
      <path className="ruler" d={marks(lengthX, (at, size) => `M${x + at} ${y}v${size}`)} />
      <path className="ruler" d={marks(lengthY, (at, size) => `M${x} ${y + at}h${size}`)} />
      {tens(lengthX).map((at) => (
        <text key={at} x={x + at} y={y - 1.2} className="ruler-number" textAnchor="middle">
          {at}
        </text>
      ))}
      {tens(lengthY).map((at) => (
        <text key={at} x={x + 7} y={y + at + 1} className="ruler-number">
          {at}
        </text>
      ))}
      <text className="ruler-text" x={x + 16} y={y + 20}>
        <tspan x={x + 16}>
          Both rulers have to measure {lengthX === lengthY ? lengthX : `${lengthX} and ${lengthY}`} mm.
        </tspan>
        <tspan x={x + 16} dy="5">
          If they don’t, print at 100 %,
        </tspan>
        <tspan x={x + 16} dy="5">
          not fitted to the page.
        </tspan>
        <tspan x={x + 16} dy="5">
          Hold the page against the labels:
        </tspan>
        <tspan x={x + 16} dy="5">
          the outlines have to lie on them.
        </tspan>
      </text>
    </MmPage>
  );
}

const tens = (length: number) => Array.from({ length: Math.floor(length / 10) }, (_, i) => (i + 1) * 10);

/** A mark each millimetre, longer at five and ten. */
const marks = (length: number, mark: (at: number, size: number) => string): string =>
  Array.from({ length: length + 1 }, (_, at) => mark(at, at % 10 === 0 ? 6 : at % 5 === 0 ? 4 : 2.5)).join('');
