import { formatPercent } from '../../core/index.ts';
import './share-bar.css';

interface Props {
  /** 1 is the whole rating. */
  share: number;
  /** What the share is of, for those who don't see the bar. */
  of: string;
}

/** A share of a rating: solid to 80 %, hatched above, with a notch at the rating; it reads in black and white. */
export function ShareBar({ share, of }: Props) {
  const level = share > 1 ? 'over' : share > 0.8 ? 'close' : 'well';
  const width = Math.min(share, 1.25) * 80;
  return (
    <span className="share" title={`${formatPercent(share)} of ${of}`}>
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <rect x="0" y="2" width="100" height="6" className="share-track" />
        <rect x="0" y="2" width={width} height="6" className={`share-fill ${level}`} />
        {level !== 'well' && hatches(width)}
        <path d="M80 0V10" className="share-rating" />
      </svg>
      <span className="figure">{formatPercent(share)}</span>
    </span>
  );
}

const hatches = (width: number) =>
  Array.from({ length: Math.floor(width / 4) }, (_, i) => i * 4).map((x) => (
    <path key={x} d={`M${x} 8L${x + 3} 2`} className="share-hatch" />
  ));
