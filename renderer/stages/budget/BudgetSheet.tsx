import { useMemo, useState } from 'react';
import { type Hookup, type Supposed, type SurveyReport, variablesOf } from '../../../core/index.ts';
import { printSheet } from '../../app/document/print-actions.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { useHookup } from '../../store/current.ts';
import { useDocument, useShownResults, useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { useIsOld } from '../../widgets/age-words.ts';
import '../tables.css';
import { BudgetSections } from './BudgetSections.tsx';
import { ShownContext } from './shown.ts';
import { findingWords, suppositionWords, variablesIn } from './suppositions.ts';
import { useWhatIf, type WhatIfAnswer } from './use-what-if.ts';
import { WhatIfPanel } from './WhatIfPanel.tsx';

/** What supplies, branches, fuses, wires and loads see in receive and sending, in the hook-up looked at; and what if. */
export function BudgetSheet() {
  const hookup = useHookup();
  const opened = useDocument((d) => d.opened);
  return (
    <aside className="sheet" aria-label="Budget">
      <div className="sheet-head">
        <h2>Current budget</h2>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print the budget
        </button>
      </div>
      <PrintFrame title="Current budget" of={`Hook-up: ${hookup.name}`}>
        <Aged of={useShownResults()}>{(report) => <Shown key={opened} report={report} hookup={hookup} />}</Aged>
      </PrintFrame>
    </aside>
  );
}

/** What is supposed is gone with the stage, or when another document is opened. */
function Shown({ report, hookup }: { report: SurveyReport; hookup: Hookup }) {
  const isOld = useIsOld();
  const station = useStation();
  const [supposed, setSupposed] = useState<Supposed>({});
  const answer = useWhatIf(station, supposed, isOld);
  const variables = useMemo(() => variablesOf(station), [station]);
  const other = answer.is === 'there' ? answer.report : null;
  const shown = useMemo(() => ({ hookup, report, other }), [hookup, report, other]);
  if (!report.budget.supplies.some((s) => s.hookup === hookup.id))
    return !isOld && <p className="soft">No supply is drawn yet.</p>;
  const words = suppositionWords(variables, supposed, station.plan.sendShare);
  return (
    <ShownContext value={shown}>
      <WhatIfPanel
        variables={variablesIn(variables, report, hookup.id)}
        supposed={supposed}
        words={words && `What if: ${words}.`}
        consequence={consequenceWords(answer, report)}
        onSuppose={setSupposed}
      />
      <BudgetSections />
    </ShownContext>
  );
}

function consequenceWords(answer: WhatIfAnswer, report: SurveyReport): string {
  switch (answer.is) {
    case 'as drawn':
      return '';
    case 'waiting':
      return 'It is tried once the drawing is computed as it is now.';
    case 'computing':
      return 'Computing…';
    case 'there':
      return answer.running ? 'Computing…' : findingWords(report.findings, answer.report.findings);
    case 'missing':
      return `Not computed. ${answer.failure.words}`;
  }
}
