import { formatVolts } from '../../../../core/index.ts';
import './voltage-bar.css';

interface Props {
  volts: number;
  minV: number;
  maxV: number;
}

/** Where a voltage lies in a load's working range: the box is the range, the mark the voltage while sending. */
export function VoltageBar({ volts, minV, maxV }: Props) {
  const span = maxV - minV || 1;
  const place = Math.max(0, Math.min(100, 15 + ((volts - minV) / span) * 70));
  const inside = volts >= minV && volts <= maxV;
  return (
    <span className="voltage">
      <span className="figure">{formatVolts(volts)}</span>
      <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
        <path d="M0 6H100" className="voltage-line" />
        <rect x="15" y="2" width="70" height="8" className="voltage-range" />
        <path d={`M${place} 0V12`} className={inside ? 'voltage-mark' : 'voltage-mark outside'} />
      </svg>
      <small>
        {inside ? 'within' : 'outside'} {Number(minV.toFixed(2))} to {Number(maxV.toFixed(2))} V
      </small>
    </span>
  );
}
