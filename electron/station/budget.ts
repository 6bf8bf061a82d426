import { budgetIn, wholeBudgetTable, writeCsv } from '../../core/index.ts';
import { budgetText } from './budget-text.ts';
import { asJson, type Command } from './command.ts';

export const budget: Command = {
  summary: 'who draws what: supplies, loads, branches, ways, fuses and wires in receive and sending',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, report, options }) {
    const asked = options.hookup ? budgetIn(report.budget, options.hookup.id) : report.budget;
    if (options.form === 'json') return { text: asJson(asked), status: 0 };
    if (options.form === 'text') return { text: `${station.title}\n\n${budgetText(asked)}`, status: 0 };
    const { head, rows } = wholeBudgetTable(asked);
    return { text: writeCsv(head, rows), status: 0 };
  },
};
