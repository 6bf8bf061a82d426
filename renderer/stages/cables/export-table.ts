import { type ReportTable, writeCsv } from '../../../core/index.ts';
import { tell } from '../../app/dialogs/questions.ts';
import { suggestedName } from '../../shell/suggested-name.ts';
import { exportText } from '../../shell/text-files.ts';
import { currentStation } from '../../store/document.ts';

/** Writes a table to a CSV file; `name` ends the name that is suggested for it. */
export async function exportTable({ head, rows }: ReportTable, name: string) {
  const file = suggestedName(currentStation().title).replace('.station.json', `-${name}.csv`);
  // With this mark spreadsheet programs know that the text is UTF-8.
  const answer = await exportText(`\uFEFF${writeCsv(head, rows)}`, file);
  if (typeof answer === 'object') await tell('Not exported', answer.error);
}
