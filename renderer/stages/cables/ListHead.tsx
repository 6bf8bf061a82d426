import type { ReportTable } from '../../../core/index.ts';
import { printSheet } from '../../app/document/print-actions.ts';
import { exportTable } from './export-table.ts';

interface Props {
  title: string;
  /** What is printed: `the cable list`. */
  what: string;
  /** The table to export, worked out when it is asked for. */
  tableOf: () => ReportTable;
  /** How the name of its file ends. */
  file: string;
  children?: React.ReactNode;
}

/** A list's title, with what can be done to all of it. */
export function ListHead({ title, what, tableOf, file, children }: Props) {
  return (
    <div className="sheet-head">
      <h2>{title}</h2>
      <div className="head-buttons">
        {children}
        <button type="button" className="button" onClick={() => void exportTable(tableOf(), file)}>
          Export as CSV
        </button>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print {what}
        </button>
      </div>
    </div>
  );
}
