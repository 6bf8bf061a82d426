import { useMemo, useState } from 'react';
import { type Severity, severities } from '../../../core/index.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { useResults, useStation } from '../../store/use-store.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { AcceptedList } from './AcceptedList.tsx';
import { FindingItem } from './FindingItem.tsx';
import './findings.css';
import { groupFindings } from './group-findings.ts';

/** What is wrong, worst first, each with its reason and its place. */
export function FindingsSheet() {
  const report = useResults((r) => r.report);
  const problem = useResults((r) => r.problem);
  const empty = useStation((s) => s.units.length === 0);
  const grouped = useMemo(() => groupFindings(report?.findings ?? []), [report]);
  const [unfolded, setUnfolded] = useState<string | null>(null);
  return (
    <aside className="sheet findings" aria-label="Findings">
      <div className="sheet-head">
        <h2>Findings</h2>
        <Counts counts={grouped.counts} />
      </div>
      <PrintFrame title="Findings">
        {!report && !problem && <p className="soft">Computing…</p>}
        {report && grouped.open.length === 0 && (
          <p className="findings-none">
            {empty ? 'Nothing is drawn yet.' : 'Nothing is wrong as far as this can be computed.'}
          </p>
        )}
        <ol>
          {grouped.open.map(({ finding, consequences }) => (
            <li key={finding.id}>
              <FindingItem
                finding={finding}
                consequences={consequences}
                unfolded={unfolded}
                onUnfold={(id) => setUnfolded(unfolded === id ? null : id)}
              />
            </li>
          ))}
        </ol>
        <AcceptedList findings={grouped.accepted} />
      </PrintFrame>
    </aside>
  );
}

function Counts({ counts }: { counts: Readonly<Record<Severity, number>> }) {
  return (
    <ul className="counts" aria-label="Open findings by severity">
      {severities.map((severity) => (
        <li key={severity} className={counts[severity] === 0 ? 'zero' : ''}>
          <span aria-hidden="true">
            <SeverityShape severity={severity} size={12} />
          </span>
          <b>{counts[severity]}</b> {severity}
        </li>
      ))}
    </ul>
  );
}
