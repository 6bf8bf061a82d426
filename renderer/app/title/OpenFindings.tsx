import { useContext, useMemo } from 'react';
import type { Finding, Severity } from '../../../core/index.ts';
import { groupFindings } from '../../stages/check/group-findings.ts';
import { useResults } from '../../store/use-store.ts';
import { showStage } from '../../store/view.ts';
import { AgeMark } from '../../widgets/AgeMark.tsx';
import { AgeContext, notSince, oldWords } from '../../widgets/age-words.ts';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';

const pressing: readonly Severity[] = ['danger', 'fault', 'doubt'];

/**
 * How many dangers, faults and doubts are open, whatever stage is shown; a press goes to them. Nothing where none is;
 * where that is not known, that it is not.
 */
export function OpenFindings() {
  const results = useResults();
  if (results.is === 'computing') return null;
  if (results.is === 'missing') return <NotComputed words="not computed" />;
  return (
    <AgeContext value={oldWords(results)}>
      {results.is === 'old' && <NotComputed words={notSince(results)} />}
      <Counts findings={results.value.findings} />
    </AgeContext>
  );
}

const NotComputed = ({ words }: { words: string }) => (
  <button
    type="button"
    className="top-findings not-computed"
    title={`Findings: ${words}`}
    onClick={() => showStage('check')}
  >
    <AgeMark size={15} />
    <span className="sr-only">Findings: </span>
    {words.split(' since')[0]}
  </button>
);

function Counts({ findings }: { findings: readonly Finding[] }) {
  const counts = useMemo(() => groupFindings(findings).counts, [findings]);
  const when = useContext(AgeContext) === null ? 'Open' : 'Open before that';
  const open = pressing.filter((severity) => counts[severity] > 0);
  if (open.length === 0) return null;
  const worded = (severity: Severity) => `${severity}${counts[severity] === 1 ? '' : 's'}`;
  return (
    <button
      type="button"
      className="top-findings"
      title={`${when}: ${open.map((severity) => `${counts[severity]} ${worded(severity)}`).join(', ')}`}
      onClick={() => showStage('check')}
    >
      <span className="sr-only">{when}: </span>
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
