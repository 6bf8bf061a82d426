import type { Connector, UnitKind } from '../../../core/index.ts';
import './cards.css';
import './ports.css';
import { cardSize } from './card-size.ts';
import { Face } from './Face.tsx';
import { ratingLine } from './figures.ts';

interface Props {
  kind: UnitKind;
  name: string;
  connectors: Readonly<Record<string, Connector>>;
}

/** A unit's card as the drawing would have it, to be looked at only. */
export function CardPreview({ kind, name, connectors }: Props) {
  const size = cardSize(kind, name);
  const rating = ratingLine(kind);
  return (
    <div
      className={`card-preview unit g-${kind.group}`}
      style={{ width: size.width, height: size.height }}
      role="img"
      aria-label={`The card of ${name}: ${kind.ports.map((p) => p.label || connectors[p.connector]?.name).join(', ')}`}
    >
      <div className="unit-head" style={{ height: size.headHeight, paddingTop: size.nameTop }}>
        <span className="unit-name">{name}</span>
      </div>
      {rating && <p className="unit-figure">{rating}</p>}
      {size.ports.map((spot, i) => {
        const face = connectors[kind.ports.find((p) => p.id === spot.id)?.connector ?? '']?.face;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: while a kind is made, two ports may have one id
          <span key={i} className={`port ${spot.side}`} style={{ left: spot.x, top: spot.y }}>
            {face && <Face face={face} />}
            {spot.label && <span className="port-label">{spot.label}</span>}
          </span>
        );
      })}
    </div>
  );
}
