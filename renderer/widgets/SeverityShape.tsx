import { counted, type Severity } from '../../core/index.ts';
import { useIsOld } from './age-words.ts';
import './severity.css';

const shapes: Record<Severity, string> = {
  danger: 'M0 -10.5L10.5 0L0 10.5L-10.5 0Z',
  fault:
    'M-8.5 -7a1.5 1.5 0 0 1 1.5 -1.5h14a1.5 1.5 0 0 1 1.5 1.5v14a1.5 1.5 0 0 1 -1.5 1.5h-14a1.5 1.5 0 0 1 -1.5 -1.5z',
  doubt: 'M-5.2 -9H5.2L10.4 0L5.2 9H-5.2L-10.4 0Z',
  note: 'M-8.5 0a8.5 8.5 0 1 0 17 0a8.5 8.5 0 1 0 -17 0z',
};

interface Props {
  severity: Severity;
  /** Written inside the shape. */
  count?: number;
  size?: number;
}

/** Diamond danger, square fault, hexagon doubt, circle note: told apart without colour. Hollow where it is from before. */
export function SeverityShape({ severity, count, size = 22 }: Props) {
  const isOld = useIsOld();
  const named = count === undefined ? severity : counted(count, severity, `findings, worst: ${severity}`);
  return (
    <svg
      className={`severity ${severity}${isOld ? ' old' : ''}`}
      viewBox="-11 -11 22 22"
      width={size}
      height={size}
      role="img"
      aria-label={isOld ? `old: ${named}` : named}
    >
      <path d={shapes[severity]} />
      {count !== undefined && (
        <text y="3.8" textAnchor="middle">
          {count}
        </text>
      )}
    </svg>
  );
}
