import { useStore } from 'zustand';
import type { Computed } from '../../store/computed.ts';
import { failureStore, mixUpStore } from '../../store/studies.ts';
import { useResults, useShownResults } from '../../store/use-store.ts';
import { Tabs } from '../../widgets/Tabs.tsx';
import { type CheckTab, checkTabs, checkView, showCheckTab } from './check-view.ts';
import { FindingsPart } from './FindingsPart.tsx';
import { groupFindings } from './group-findings.ts';
import { Steady } from './Steady.tsx';
import { FailuresPart } from './studies/FailuresPart.tsx';
import { grouped } from './studies/grouped.ts';
import { MixUpsPart } from './studies/MixUpsPart.tsx';

const names: Record<CheckTab, string> = { findings: 'Findings', mixUps: 'Mix-ups', failures: 'If it fails' };
const parts = { findings: FindingsPart, mixUps: MixUpsPart, failures: FailuresPart };

/** What is wrong, what a hand could do wrong, and what could fail. */
export function CheckSheet() {
  const tab = useStore(checkView, (v) => v.tab);
  const counts = useCounts();
  // What is steady looks where everything is only as it updates itself: with whatever a list is made of.
  useShownResults();
  useStore(mixUpStore, ({ shown }) => shown);
  useStore(failureStore, ({ shown }) => shown);
  const Part = parts[tab];
  return (
    <Steady label={names[tab]} className="findings">
      <Tabs
        label="Lists"
        prefix="check"
        tabs={checkTabs}
        tab={tab}
        nameOf={(id) => [names[id], counts[id]].filter(Boolean).join(' ')}
        onShow={showCheckTab}
      />
      <div role="tabpanel" id="check-part" aria-labelledby={`check-tab-${tab}`}>
        <Part />
      </div>
    </Steady>
  );
}

/** How many rows each list has; empty where that is not known of the drawing as it is. */
function useCounts(): Record<CheckTab, string> {
  const findings = useResults((r) => countIn(r, (report) => groupFindings(report.findings).open.length));
  const mixUps = useStore(mixUpStore, ({ shown }) => countIn(shown, ({ study }) => study.mixUps.length));
  const failures = useStore(failureStore, ({ shown }) =>
    countIn(shown, ({ groups }) => groups.reduce((n, g) => n + g.failures.length, 0)),
  );
  return { findings, mixUps, failures };
}

/** For the moment between an edit and what comes of it the last count stands, so that the tabs don't jump. */
const countIn = <T,>(computed: Computed<T>, count: (value: T) => number): string =>
  computed.is === 'fresh' || computed.is === 'passing' ? grouped(count(computed.value)) : '';
