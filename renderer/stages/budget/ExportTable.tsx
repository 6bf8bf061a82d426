import { useContext } from 'react';
import { type BudgetTableName, budgetIn, budgetTable, type SurveyReport, writeCsv } from '../../../core/index.ts';
import { exportOrTell } from '../../app/document/export-or-tell.ts';
import { AgeContext } from '../../widgets/age-words.ts';
import { exportName } from './export-name.ts';
import { rfIn, type Shown, ShownContext } from './shown.ts';

const titles: Record<BudgetTableName, string> = {
  supplies: 'supplies',
  loads: 'loads',
  branches: 'branches',
  ways: 'ways',
  fuses: 'fuses',
  wires: 'wires',
  batteries: 'batteries',
  courses: 'battery over time',
  rf: 'RF levels',
};

/** Writes a table as it is shown, with plain numbers, for a spreadsheet. */
export function ExportTable({ name }: { name: BudgetTableName }) {
  const shown = useContext(ShownContext);
  const old = useContext(AgeContext);
  if (!shown) return null;
  return (
    <button
      type="button"
      className="button export-button"
      aria-label={`Save ${titles[name]} as CSV`}
      onClick={() => void exportOrTell(csvOf(shown, old, name), exportName(`${name}.csv`))}
    >
      CSV
    </button>
  );
}

/** While other figures are supposed, the rows as drawn and those with them, told apart in the first column; old ones too. */
function csvOf({ hookup, report, other }: Shown, old: string | null, name: BudgetTableName): string {
  const tableOf = (r: SurveyReport) => budgetTable(name, budgetIn(r.budget, hookup.id), rfIn(r, hookup.id));
  const drawn = tableOf(report);
  if (!other && !old) return writeCsv(drawn.head, drawn.rows);
  return writeCsv(
    ['Figures', ...drawn.head],
    [
      ...drawn.rows.map((row) => [old ?? 'as drawn', ...row]),
      ...(other ? tableOf(other).rows.map((row) => ['what if', ...row]) : []),
    ],
  );
}
