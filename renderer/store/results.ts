import { createStore } from 'zustand/vanilla';
import type { Station, SurveyReport } from '../../core/index.ts';

/** What the newest finished survey found. */
export interface ResultsState {
  readonly report: SurveyReport | null;
  /** The document that was surveyed. */
  readonly station: Station | null;
  readonly running: boolean;
  /** A sentence where the survey could not be finished; the report is then the last one that was. */
  readonly problem: string | null;
}

export const resultsStore = createStore<ResultsState>(() => ({
  report: null,
  station: null,
  running: false,
  problem: null,
}));
