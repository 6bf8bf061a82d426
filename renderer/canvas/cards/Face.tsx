import { memo } from 'react';
import type { Connector } from '../../../core/index.ts';

/** A connector seen from the front, about 14 px wide, after the outlines in its standard. */
export const Face = memo(function Face({ face }: { face: Connector['face'] }) {
  return (
    <svg className="face" viewBox="-12 -12 24 24" width="24" height="24" aria-hidden="true">
      {faces[face]}
    </svg>
  );
});

const metal = (r: number) => <circle r={r} className="face-metal" />;
const ring = (r: number) => <circle r={r} className="face-ring" />;
const pin = (r: number) => <circle r={r} className="face-pin" />;

const hexagon = (r: number) =>
  [0, 1, 2, 3, 4, 5]
    .map((i) => `${(r * Math.cos((i * Math.PI) / 3)).toFixed(1)},${(r * Math.sin((i * Math.PI) / 3)).toFixed(1)}`)
    .join(' ');

const faces: Record<Connector['face'], React.ReactNode> = {
  // A sleeve around a pin.
  barrel: (
    <g>
      {metal(7)}
      {ring(3.9)}
      {pin(1.5)}
    </g>
  ),
  // Two bayonet studs.
  bnc: (
    <g>
      <path d="M-9.5 0h19" className="face-stud" />
      {metal(6.5)}
      {pin(1.9)}
    </g>
  ),
  // A square flange with a screw in each corner.
  uhf: (
    <g>
      <rect x="-8" y="-8" width="16" height="16" rx="2" className="face-metal" />
      <path d="M-5.8 -5.8h.01M5.8 -5.8h.01M-5.8 5.8h.01M5.8 5.8h.01" className="face-screw" />
      {ring(4.9)}
      {pin(1.9)}
    </g>
  ),
  // A wide thread around a wide ring.
  n: (
    <g>
      {metal(8)}
      {ring(6.1)}
      {ring(3.2)}
      {pin(1.2)}
    </g>
  ),
  sma: (
    <g>
      <polygon points={hexagon(6.6)} className="face-metal" />
      {ring(3.2)}
      {pin(1.1)}
    </g>
  ),
  // A shell with a wide hole.
  phono: (
    <g>
      {metal(7)}
      {ring(4.7)}
      <circle r={2.3} className="face-hole" />
    </g>
  ),
  mono: (
    <g>
      {metal(6.5)}
      <circle r={3} className="face-hole" />
    </g>
  ),
  // The ring's spring makes the difference.
  stereo: (
    <g>
      {metal(6.5)}
      <circle r={3} className="face-hole" />
      <path d="M0 -6.5v3M0 3.5v3" className="face-line" />
    </g>
  ),
  'two-pole': (
    <g>
      <path d="M-6.5 0v-7.5a2 2 0 0 1 2 -2h9a2 2 0 0 1 2 2v7.5z" className="face-plus" />
      <path d="M-6.5 0v7.5a2 2 0 0 0 2 2h9a2 2 0 0 0 2 -2v-7.5z" className="face-minus" />
      <path d="M-2 -5h4M0 -7v4M-2 5h4" className="face-sign" />
    </g>
  ),
  posts: (
    <g>
      <circle cy="-5.6" r="5" className="face-plus" />
      <circle cy="5.6" r="5" className="face-minus" />
      <path d="M-2.4 -5.6h4.8M0 -8v4.8M-2.4 5.6h4.8" className="face-sign" />
    </g>
  ),
  // Two studs with their ring terminals.
  ring: (
    <g>
      <circle cy="-5.6" r="4.6" className="face-metal" />
      <circle cy="-5.6" r="2.2" className="face-plus" />
      <circle cy="5.6" r="4.6" className="face-metal" />
      <circle cy="5.6" r="2.2" className="face-minus" />
    </g>
  ),
  wire: (
    <g>
      {metal(5)}
      <path d="M-2.5 -2.5l5 5M-2.5 2.5l5 -5" className="face-line" />
    </g>
  ),
  // The protective-earth mark of IEC 60417.
  earth: (
    <g>
      {metal(8)}
      <path d="M0 -5.4v5.2M-4.6 -.2h9.2M-3 2.2h6M-1.4 4.6h2.8" className="face-line" />
    </g>
  ),
  multi: (
    <g>
      <rect x="-8" y="-5.5" width="16" height="11" rx="2.5" className="face-metal" />
      <path
        d="M-4.6 -1.8h.01M-1.5 -1.8h.01M1.5 -1.8h.01M4.6 -1.8h.01M-3 2h.01M0 2h.01M3 2h.01"
        className="face-screw"
      />
    </g>
  ),
};
