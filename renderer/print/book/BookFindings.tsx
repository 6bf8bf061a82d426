import { useMemo } from 'react';
import type { Finding, SurveyReport } from '../../../core/index.ts';
import { groupFindings } from '../../stages/check/group-findings.ts';
import { placeName } from '../../stages/check/place-name.ts';
import { useShownResults, useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { useIsOld } from '../../widgets/age-words.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';

/** What is wrong with its reason and advice, what follows from it, and what the user lives with and why. */
export const BookFindings = () => <Aged of={useShownResults()}>{(report) => <Findings report={report} />}</Aged>;

function Findings({ report }: { report: SurveyReport }) {
  const isOld = useIsOld();
  const { open, accepted } = useMemo(() => groupFindings(report.findings), [report]);
  return (
    <>
      {open.length === 0 && !isOld && <p>Nothing is wrong as far as this can be computed.</p>}
      {open.map(({ finding, consequences }) => (
        <OnPaper key={finding.id} finding={finding}>
          <p>
            {finding.why} <b>What to do.</b> {finding.advice}
          </p>
          {consequences.length > 0 && <p>From it follows: {consequences.map((c) => c.title).join('; ')}.</p>}
        </OnPaper>
      ))}
      {accepted.length > 0 && <h3>Accepted</h3>}
      {accepted.map((finding) => (
        <OnPaper key={finding.id} finding={finding}>
          <p>Accepted: {finding.accepted}</p>
        </OnPaper>
      ))}
    </>
  );
}

function OnPaper({ finding, children }: { finding: Finding; children: React.ReactNode }) {
  const station = useStation();
  const places = [...new Set(finding.at.map((place) => placeName(station, place)).filter(Boolean))];
  return (
    <div className="book-finding">
      <SeverityShape severity={finding.severity} size={14} />
      <div>
        <h4>
          {finding.title} <small>{finding.severity}</small>
        </h4>
        <p>{finding.message}</p>
        {places.length > 0 && <p className="book-where">{places.join(', ')}</p>}
        {children}
      </div>
    </div>
  );
}
