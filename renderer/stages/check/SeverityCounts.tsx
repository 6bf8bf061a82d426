import { type Severity, severities } from '../../../core/index.ts';
import { useIsOld } from '../../widgets/age-words.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';

interface Props {
  label: string;
  counts: Readonly<Record<Severity, number>>;
  /** Those that are not shown. */
  hidden: readonly Severity[];
  onToggle: (severity: Severity) => void;
}

/** How many there are of each severity; a click hides them, or shows them again. */
export function SeverityCounts({ label, counts, hidden, onToggle }: Props) {
  const isOld = useIsOld();
  return (
    <ul className="counts" aria-label={label}>
      {severities.map((severity) => {
        const shown = !hidden.includes(severity);
        return (
          <li key={severity} className={counts[severity] === 0 ? 'zero' : ''}>
            <button
              type="button"
              aria-pressed={shown}
              title={shown ? `Hide each ${severity}` : `Show each ${severity}`}
              onClick={() => onToggle(severity)}
            >
              <span aria-hidden="true">
                <SeverityShape severity={severity} size={12} />
              </span>
              {isOld && <span className="sr-only">was </span>}
              <b>{counts[severity]}</b> {severity}
            </button>
          </li>
        );
      })}
    </ul>
  );
}
