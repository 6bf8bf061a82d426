import { hookupsOf, type SurveyReport } from '../../../core/index.ts';
import { BudgetSections } from '../../stages/budget/BudgetSections.tsx';
import { ShownContext } from '../../stages/budget/shown.ts';
import { useShownResults, useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { useIsOld } from '../../widgets/age-words.ts';

/** Who draws what in each hook-up, with its charts. */
export const BookBudget = () => <Aged of={useShownResults()}>{(report) => <Budgets report={report} />}</Aged>;

function Budgets({ report }: { report: SurveyReport }) {
  const station = useStation();
  const isOld = useIsOld();
  const hookups = hookupsOf(station).filter((h) => report.budget.supplies.some((s) => s.hookup === h.id));
  if (hookups.length === 0) return !isOld && <p>No supply is drawn.</p>;
  return hookups.map((hookup) => (
    <section key={hookup.id} className="book-hookup">
      {hookups.length > 1 && <h3>{hookup.name}</h3>}
      <ShownContext value={{ hookup, report, other: null }}>
        <BudgetSections />
      </ShownContext>
    </section>
  ));
}
