import { type Port, type RingColour, ringColours } from '../../../core/index.ts';

interface Props {
  ring: RingColour;
  side: Port['side'];
  /** It is not there yet: a measure that is looked at would put it there. */
  planned?: boolean;
}

/** Where the letters stand, from the port's middle: over the card, between two rows of ports. */
const lettersAt: Record<Port['side'], { readonly x: number; readonly y: number }> = {
  left: { x: 12, y: -9 },
  right: { x: -12, y: -9 },
  top: { x: 15, y: 7 },
  bottom: { x: 15, y: -7 },
};

const letterPx = 5.6;

/**
 * A ring around a port, with the letters of its colour after IEC 60757: part of an SVG whose middle is the port's. Its
 * colours are those of the thing, on the screen as on paper.
 */
export function PortRing({ ring, side, planned = false }: Props) {
  const { x, y } = lettersAt[side];
  const width = ring.length * letterPx + 4;
  const dashes = planned ? '5 3.2' : undefined;
  return (
    <g>
      <circle r="11" fill="none" stroke="#23282e" strokeWidth="4.4" strokeDasharray={dashes} />
      <circle r="11" fill="none" stroke={ringColours[ring].print} strokeWidth="3" strokeDasharray={dashes} />
      {ring === 'GNYE' && (
        <circle r="11" fill="none" stroke={ringColours.YE.print} strokeWidth="3" strokeDasharray="5 5" />
      )}
      <rect
        x={x - width / 2}
        y={y - 5}
        width={width}
        height="10"
        rx="2"
        fill="#ffffff"
        stroke="#23282e"
        strokeWidth="0.8"
        strokeDasharray={planned ? '2 1.4' : undefined}
      />
      <text x={x} y={y + 3.1} textAnchor="middle" fill="#23282e" fontSize="8.5" fontWeight="700" fontFamily="monospace">
        {ring}
      </text>
    </g>
  );
}
