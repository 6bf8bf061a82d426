import { useMemo } from 'react';
import type { Severity } from '../../core/index.ts';
import { groupFindings } from '../stages/check/group-findings.ts';
import { useResults } from '../store/use-store.ts';
import { showStage } from '../store/view.ts';
import { SeverityShape } from '../widgets/SeverityShape.tsx';

const pressing: readonly Severity[] = ['danger', 'fault', 'doubt'];

/** How many dangers, faults and doubts are open, whatever stage is shown; a press goes to them. Nothing where none is. */
export function OpenFindings() {
  const report = useResults((r) => r.report);
  const counts = useMemo(() => groupFindings(report?.findings ?? []).counts, [report]);
  const open = pressing.filter((severity) => counts[severity] > 0);
  if (open.length === 0) return null;
  const words = open.map((severity) => `${counts[severity]} ${severity}${counts[severity] === 1 ? '' : 's'}`);
  return (
    <button
      type="button"
      className="top-findings"
      aria-label={`Open: ${words.join(', ')}. Go to Check`}
      title={`Open: ${words.join(', ')}`}
      onClick={() => showStage('check')}
    >
      {open.map((severity) => (
        <span key={severity} aria-hidden="true">
          <SeverityShape severity={severity} size={13} />
          {counts[severity]}
        </span>
      ))}
    </button>
  );
}
