import { useMemo } from 'react';
import type { Severity } from '../../../core/index.ts';
import { groupFindings } from '../../stages/check/group-findings.ts';
import { useResults } from '../../store/use-store.ts';
import { showStage } from '../../store/view.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';

const pressing: readonly Severity[] = ['danger', 'fault', 'doubt'];

/** How many dangers, faults and doubts are open, whatever stage is shown; a press goes to them. Nothing where none is. */
export function OpenFindings() {
  const report = useResults((r) => r.report);
  const counts = useMemo(() => groupFindings(report?.findings ?? []).counts, [report]);
  const open = pressing.filter((severity) => counts[severity] > 0);
  if (open.length === 0) return null;
  const worded = (severity: Severity) => `${severity}${counts[severity] === 1 ? '' : 's'}`;
  return (
    <button
      type="button"
      className="top-findings"
      title={`Open: ${open.map((severity) => `${counts[severity]} ${worded(severity)}`).join(', ')}`}
      onClick={() => showStage('check')}
    >
      <span className="sr-only">Open: </span>
      {open.map((severity) => (
        <span key={severity}>
          <span aria-hidden="true">
            <SeverityShape severity={severity} size={13} />
          </span>
          {counts[severity]}
          <span className="sr-only"> {worded(severity)},</span>
        </span>
      ))}
      <span className="sr-only"> go to Check</span>
    </button>
  );
}
