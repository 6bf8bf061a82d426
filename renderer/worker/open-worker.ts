import type { SurveyThread } from './run-surveys.ts';

/** A thread of its own that surveys what it is sent. */
export const openWorker = (): SurveyThread =>
  new Worker(new URL('./survey.worker.ts', import.meta.url), { type: 'module' }) as SurveyThread;
