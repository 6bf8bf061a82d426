import { useMemo } from 'react';
import { counted, type Severity } from '../../../core/index.ts';
import { groupFindings } from '../../stages/check/group-findings.ts';
import { ofAnyAge } from '../../store/computed.ts';
import { useShownResults } from '../../store/use-store.ts';
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
  const results = useShownResults();
  const findings = ofAnyAge(results)?.findings;
  const counts = useMemo(() => findings && groupFindings(findings).counts, [findings]);
  const unknown = results.is === 'old' ? notSince(results) : results.is === 'missing' ? 'not computed' : null;
  const open = pressing.filter((severity) => counts && counts[severity] > 0);
  if (open.length === 0 && unknown === null) return null;
  const worded = (severity: Severity) => counted(counts?.[severity] ?? 0, severity);
  const said = open.length > 0 && `${unknown === null ? 'Open' : 'open before'}: ${open.map(worded).join(', ')}`;
  const words = [unknown && `Findings ${unknown}`, said].filter(Boolean).join('; ');
  return (
    <AgeContext value={oldWords(results)}>
      <button
        type="button"
        className={unknown === null ? 'top-findings' : 'top-findings not-computed'}
        title={words}
        onClick={() => showStage('check')}
      >
        {unknown !== null && <AgeMark size={15} />}
        <span className="sr-only">{words}</span>
        {open.length === 0 && <span aria-hidden="true">not computed</span>}
        {open.map((severity) => (
          <span key={severity} aria-hidden="true">
            <SeverityShape severity={severity} size={13} />
            {counts?.[severity]}
          </span>
        ))}
        <span className="sr-only">, go to Check</span>
      </button>
    </AgeContext>
  );
}
