import { useEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import type { SurveyReport } from '../../../core/index.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { timeOf } from '../../store/computed.ts';
import { useShownResults, useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { AgeLine } from '../../widgets/AgeLine.tsx';
import { useIsOld } from '../../widgets/age-words.ts';
import { AcceptedList } from './AcceptedList.tsx';
import { FindingFilter } from './FindingFilter.tsx';
import { FindingItem } from './FindingItem.tsx';
import './findings.css';
import { filterFindings } from './filter-findings.ts';
import { findingsView } from './findings-view.ts';
import { groupFindings } from './group-findings.ts';
import { keepTyped } from './keep-typed.ts';

/** What is wrong, worst first, each with its reason and its place. */
export function FindingsPart() {
  const results = useShownResults();
  // Beside the title, where there is room for it: the list does not move when it comes or goes.
  const isOld = results.is === 'old';
  return (
    <>
      <div className="sheet-head findings-title">
        <h2 tabIndex={-1}>Findings</h2>
        {isOld && <AgeLine of={results}>Old, from {timeOf(results.at)}.</AgeLine>}
      </div>
      <PrintFrame title="Findings">
        <Aged of={results} saidAbove={isOld}>
          {(report) => <Findings report={report} />}
        </Aged>
      </PrintFrame>
    </>
  );
}

function Findings({ report }: { report: SurveyReport }) {
  const isOld = useIsOld();
  const station = useStation();
  const { hidden, about, typed } = useStore(findingsView);
  const grouped = useMemo(() => groupFindings(report.findings), [report]);
  const { open, accepted, hiddenCount } = useMemo(
    () => filterFindings(station, grouped, { hidden, about }),
    [station, grouped, hidden, about],
  );
  const found = useMemo(() => new Set(report.findings.map((f) => f.id)), [report]);
  const order = useRef<readonly string[]>([]);
  const listed = keepTyped(open, typed, order.current, found);
  useEffect(() => {
    order.current = listed.map((c) => c.finding.id);
  });
  return (
    <>
      <div className="findings-head">
        <FindingFilter all={grouped} hiddenCount={hiddenCount} />
      </div>
      {listed.length === 0 && (hiddenCount > 0 || !isOld) && (
        <p className="findings-none">{noneWords(station.units.length === 0, hiddenCount)}</p>
      )}
      <ol>
        {listed.map(({ finding, consequences, gone }) => (
          <li key={finding.id}>
            <FindingItem finding={finding} consequences={consequences} gone={gone} />
          </li>
        ))}
      </ol>
      <AcceptedList findings={accepted} />
    </>
  );
}

function noneWords(empty: boolean, hiddenCount: number): string {
  if (hiddenCount > 0) return 'No open finding fits the filter.';
  return empty ? 'Nothing is drawn yet.' : 'Nothing is wrong as far as this can be computed.';
}
