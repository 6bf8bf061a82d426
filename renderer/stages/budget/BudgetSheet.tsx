import type { Budget } from '../../../core/index.ts';
import { printSheet } from '../../app/print-actions.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { useHookup } from '../../store/current.ts';
import { useResults } from '../../store/use-store.ts';
import '../tables.css';
import { BatteryTable } from './BatteryTable.tsx';
import { FuseTable } from './FuseTable.tsx';
import { LoadTable } from './LoadTable.tsx';
import { SupplyTable } from './SupplyTable.tsx';
import { WireTable } from './WireTable.tsx';

/** What supplies, fuses, wires and loads see in receive and sending, in the hook-up looked at. */
export function BudgetSheet() {
  const hookup = useHookup();
  const budget = useResults((r) => r.report?.budget);
  return (
    <aside className="sheet" aria-label="Budget">
      <div className="sheet-head">
        <h2>Current budget</h2>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print the budget
        </button>
      </div>
      <PrintFrame title="Current budget" of={`Hook-up: ${hookup.name}`}>
        {budget && <Tables budget={budget} hookup={hookup.id} />}
      </PrintFrame>
    </aside>
  );
}

function Tables({ budget, hookup }: { budget: Budget; hookup: string }) {
  const here = <T extends { hookup: string }>(rows: readonly T[]) => rows.filter((row) => row.hookup === hookup);
  const supplies = here(budget.supplies);
  if (supplies.length === 0) return <p className="soft">No supply is drawn yet.</p>;
  return (
    <>
      <SupplyTable rows={supplies} />
      <LoadTable rows={here(budget.loads)} />
      <FuseTable rows={here(budget.fuses)} />
      <WireTable rows={here(budget.wires)} />
      <BatteryTable rows={here(budget.batteries)} />
    </>
  );
}
