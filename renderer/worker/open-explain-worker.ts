import type { ExplainThread } from './explain-findings.ts';

/** A thread of its own that says what a hand did wrong on a drawing. */
export const openExplainWorker = (): ExplainThread =>
  new Worker(new URL('./explain.worker.ts', import.meta.url), { type: 'module' }) as ExplainThread;
