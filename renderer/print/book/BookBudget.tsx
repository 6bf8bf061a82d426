import { hookupsOf } from '../../../core/index.ts';
import { BudgetSections } from '../../stages/budget/BudgetSections.tsx';
import { ShownContext } from '../../stages/budget/shown.ts';
import { useResults, useStation } from '../../store/use-store.ts';

/** Who draws what in each hook-up, with its charts. */
export function BookBudget() {
  const station = useStation();
  const report = useResults((r) => r.report);
  if (!report) return null;
  const hookups = hookupsOf(station).filter((h) => report.budget.supplies.some((s) => s.hookup === h.id));
  if (hookups.length === 0) return <p>No supply is drawn.</p>;
  return hookups.map((hookup) => (
    <section key={hookup.id} className="book-hookup">
      {hookups.length > 1 && <h3>{hookup.name}</h3>}
      <ShownContext value={{ hookup, report, other: null }}>
        <BudgetSections />
      </ShownContext>
    </section>
  ));
}
