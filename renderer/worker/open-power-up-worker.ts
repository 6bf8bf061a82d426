import type { PowerUpThread } from './power-up-messages.ts';

/** A thread of its own for power-up sheets, so that surveys don't wait for it. */
export const openPowerUpWorker = (): PowerUpThread =>
  new Worker(new URL('./power-up.worker.ts', import.meta.url), { type: 'module' }) as PowerUpThread;
