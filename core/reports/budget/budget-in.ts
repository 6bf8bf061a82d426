import type { Budget } from './rows.ts';

/** The budget of one hook-up alone, by its id. */
export function budgetIn(budget: Budget, hookup: string): Budget {
  const here = <T extends { hookup: string }>(rows: readonly T[]) => rows.filter((row) => row.hookup === hookup);
  return {
    supplies: here(budget.supplies),
    loads: here(budget.loads),
    branches: here(budget.branches),
    ways: here(budget.ways),
    fuses: here(budget.fuses),
    wires: here(budget.wires),
    batteries: here(budget.batteries),
  };
}
