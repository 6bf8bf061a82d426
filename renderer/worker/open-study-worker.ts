import type { StudyName, StudyThread } from './study-messages.ts';

/** A thread of its own for studies: surveys don't wait for them, and one can be stopped without the other. */
export const openStudyWorker = <N extends StudyName>(): StudyThread<N> =>
  new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' }) as StudyThread<N>;
