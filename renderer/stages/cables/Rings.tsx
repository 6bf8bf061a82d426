import { type RingColour, ringColours } from '../../../core/index.ts';

/** Colour rings as they sit on a cable, with their letters: from the plug on, the wide one first. */
export function Rings({ rings }: { rings: readonly RingColour[] }) {
  const names = rings.map((ring) => ringColours[ring].name).join(', ');
  return (
    <small className="rings" title={`Rings: ${names}`}>
      <span className="sr-only">Rings: {names}</span>
      <svg viewBox={`0 0 ${rings.length * 7 + 5} 8`} width={rings.length * 7 + 5} height={8} aria-hidden="true">
        {rings.map((ring, i) => (
          <g key={`${ring}${rings.slice(0, i).filter((r) => r === ring).length}`}>
            <rect
              x={i === 0 ? 0.5 : i * 7 + 4.5}
              y={0.5}
              width={i === 0 ? 9 : 5}
              height={7}
              fill={ringColours[ring].print}
              className="ring"
            />
            {ring === 'GNYE' && <rect x={3.5} y={0.5} width={3} height={7} fill={ringColours.YE.print} />}
          </g>
        ))}
      </svg>
      <span aria-hidden="true">{rings.join(' ')}</span>
    </small>
  );
}
