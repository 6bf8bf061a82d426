import type { Budget } from '../../core/index.ts';
import { budgetCsv } from './budget-csv.ts';
import { budgetText } from './budget-text.ts';
import { asJson, type Command, isAsked } from './command.ts';

export const budget: Command = {
  summary: 'who draws what: supplies, loads, branches, ways, fuses and wires in receive and sending',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, report, options }) {
    const keep = <T extends { hookup: string }>(rows: readonly T[]) =>
      rows.filter((row) => isAsked(options, row.hookup));
    const { supplies, loads, branches, ways, fuses, wires, batteries } = report.budget;
    const kept: Budget = {
      supplies: keep(supplies),
      loads: keep(loads),
      branches: keep(branches),
      ways: keep(ways),
      fuses: keep(fuses),
      wires: keep(wires),
      batteries: keep(batteries),
    };
    if (options.form === 'json') return { text: asJson(kept), status: 0 };
    return {
      text: options.form === 'csv' ? budgetCsv(kept) : `${station.title}\n\n${budgetText(kept)}`,
      status: 0,
    };
  },
};
