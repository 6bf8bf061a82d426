import { type FlagText, lineHeight, type PlacedFlag, ringColours, ringMm } from '../../../core/index.ts';
import { flagFont } from './measure-text.ts';

/** One flag in its place: rings, text once or twice, and where it folds. */
export function FlagLabel({ placed }: { placed: PlacedFlag }) {
  const { flag, label, rings, texts, fitted, folds } = placed;
  return (
    <g>
      {folds.map((x) => (
        <path key={x} className="fold" d={`M${x} ${label.y}V${label.y + label.height}`} />
      ))}
      {texts.map((text, i) => (
        <g key={text.x}>
          {rings && <FlagRings flag={flag} x={text.x - rings.width} y={rings.y} height={rings.height} />}
          <text className="flag-text" fontFamily={flagFont} fontSize={fitted?.sizeMm ?? 2} aria-hidden={i > 0}>
            {(fitted?.lines ?? [flag.number]).map((line, n) => (
              <tspan
                // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name but their place
                key={n}
                x={text.x}
                y={top(placed) + (n + 0.8) * lineHeight * (fitted?.sizeMm ?? 2)}
                fontWeight={n === 0 ? 700 : 400}
              >
                {line}
              </tspan>
            ))}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Text stands in the middle of its label's height. */
function top({ texts: [text], fitted }: PlacedFlag): number {
  if (!text) return 0;
  const used = (fitted?.lines.length ?? 1) * lineHeight * (fitted?.sizeMm ?? 2);
  return text.y + Math.max(0, (text.height - used) / 2);
}

const lettersMm = 1.4;

function FlagRings({ flag, x, y, height }: { flag: FlagText; x: number; y: number; height: number }) {
  const barMm = height - lettersMm - 0.6;
  return (
    <g>
      {flag.rings.map((ring, i) => {
        const width = i === 0 ? ringMm.class : ringMm.digit;
        const left = x + (i === 0 ? 0 : ringMm.class + (i - 1) * ringMm.digit) + i * ringMm.gap;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: rings have no name but their place
          <g key={i}>
            <rect className="ring" x={left} y={y} width={width} height={barMm} fill={ringColours[ring].print} />
            {ring === 'GNYE' && (
              <rect x={left + width / 3} y={y} width={width / 3} height={barMm} fill={ringColours.YE.print} />
            )}
            <text className="ring-letters" x={left + width / 2} y={y + height} fontSize={lettersMm} textAnchor="middle">
              {ring}
            </text>
          </g>
        );
      })}
    </g>
  );
}
