import { kindOf, type RingColour, type Station, type Unit, type UnitKind } from '../../../core/index.ts';
import type { PortSpot } from '../../canvas/cards/card-size.ts';
import { Face } from '../../canvas/cards/Face.tsx';
import { ratingLine } from '../../canvas/cards/figures.ts';
import { PortRing } from '../../canvas/cards/PortRing.tsx';
import { textWidth } from '../../canvas/cards/text-width.ts';
import { sizeOf } from '../../canvas/layout.ts';

interface Props {
  station: Station;
  unit: Unit;
  /** With its ports on the sides where the user put them. */
  kind: UnitKind;
}

/** From a port's middle to its label, and half a face. */
const labelPx = 12;
const facePx = 12;

/** A unit's card on paper: name, rating and ports. */
export function SvgCard({ station, unit, kind }: Props) {
  const { x, y } = unit.position;
  const { width, height, headHeight, nameTop, ports } = sizeOf(kind, unit.name);
  const rating = ratingLine(kindOf(station, unit));
  return (
    <g className={`s-card g-${kind.group}`} transform={`translate(${x} ${y})`}>
      <rect className="s-body" width={width} height={height} rx="9" />
      <path className="s-head" d={`M0 ${headHeight}V9a9 9 0 0 1 9 -9H${width - 9}a9 9 0 0 1 9 9V${headHeight}z`} />
      <rect className="s-edge" width={width} height={height} rx="9" />
      <text className="s-name" x="11" y={nameTop + 19}>
        {shortened(unit.name, width - 20)}
      </text>
      {rating && (
        <text className="s-figure" x={width / 2} y={headHeight + 14}>
          {rating}
        </text>
      )}
      {ports.map((spot) => {
        const face = station.connectors[kind.ports.find((p) => p.id === spot.id)?.connector ?? '']?.face;
        return (
          <g key={spot.id}>
            {face && (
              <g transform={`translate(${spot.x - facePx} ${spot.y - facePx})`}>
                <Face face={face} />
              </g>
            )}
            {spot.label && <PortLabel spot={spot} />}
            <Ring ring={unit.rings?.[spot.id]} spot={spot} />
          </g>
        );
      })}
    </g>
  );
}

function Ring({ ring, spot: { x, y, side } }: { ring: RingColour | undefined; spot: PortSpot }) {
  return (
    ring && (
      <g transform={`translate(${x} ${y})`}>
        <PortRing ring={ring} side={side} />
      </g>
    )
  );
}

function PortLabel({ spot: { side, x, y, label } }: { spot: PortSpot }) {
  const places = {
    left: { x: x + labelPx, y: y + 4, className: 's-port' },
    right: { x: x - labelPx, y: y + 4, className: 's-port s-end' },
    top: { x, y: y + 19, className: 's-port s-middle' },
    bottom: { x, y: y - 12, className: 's-port s-middle' },
  };
  return <text {...places[side]}>{label}</text>;
}

/** A name cut to a width; most are not. */
function shortened(name: string, width: number): string {
  if (textWidth(name, 14, 'bold') <= width) return name;
  let cut = name;
  while (cut.length > 1 && textWidth(`${cut}…`, 14, 'bold') > width) cut = cut.slice(0, -1);
  return `${cut.trimEnd()}…`;
}
