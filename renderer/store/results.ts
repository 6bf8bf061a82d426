import { createStore } from 'zustand/vanilla';
import type { SurveyReport } from '../../core/index.ts';
import type { Computed } from './computed.ts';

/** What the newest finished survey found, and of which age it is. */
export type Results = Computed<SurveyReport>;

export const resultsStore = createStore<Results>(() => ({ is: 'computing' }));

export const showResults = (results: Results) => resultsStore.setState(results, true);
