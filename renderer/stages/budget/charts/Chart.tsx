import { useContext, useId, useRef } from 'react';
import { exportOrTell } from '../../../app/document/export-or-tell.ts';
import { AgeContext } from '../../../widgets/age-words.ts';
import { exportName } from '../export-name.ts';
import './chart.css';
import { standaloneSvg } from './standalone-svg.ts';

/** Every chart is drawn this wide, in its own units, and scales with the sheet. */
export const chartWidth = 640;

interface Props {
  title: string;
  /** What the chart says, in a sentence, for those who don't see it. */
  sentence: string;
  height: number;
  fileName: string;
  /** What can be chosen of it. */
  tools?: React.ReactNode;
  note?: string;
  children: (hatch: string) => React.ReactNode;
}

/** A chart with its title; it reads without colour: solid, hatched and outlined, with a label at everything. */
export function Chart({ title, sentence, height, fileName, tools, note, children }: Props) {
  const id = useId();
  const svg = useRef<SVGSVGElement>(null);
  // In the picture itself: it leaves as a file too.
  const old = useContext(AgeContext);
  const oldPx = old ? 20 : 0;
  const save = () => {
    if (svg.current) void exportOrTell(standaloneSvg(svg.current, title), exportName(`${fileName}.svg`));
  };
  return (
    <figure className="chart" aria-labelledby={`${id}-title`}>
      <div className="budget-part-head">
        <figcaption className="table-title" id={`${id}-title`}>
          {title}
        </figcaption>
        <span className="chart-tools">
          {tools}
          <button
            type="button"
            className="button export-button"
            aria-label={`Save chart “${title}” as SVG`}
            onClick={save}
          >
            SVG
          </button>
        </span>
      </div>
      <svg
        ref={svg}
        className="chart-picture"
        viewBox={`0 ${-oldPx} ${chartWidth} ${height + oldPx}`}
        role="img"
        aria-label={old ? `${old}. ${sentence}` : sentence}
      >
        <defs>
          <pattern id={`${id}-hatch`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M0 0V5" className="chart-hatch" />
          </pattern>
        </defs>
        {old && (
          <text x={0} y={-6} className="chart-old">
            {old}
          </text>
        )}
        {children(`url(#${id}-hatch)`)}
      </svg>
      {note && <p className="chart-note">{note}</p>}
    </figure>
  );
}
