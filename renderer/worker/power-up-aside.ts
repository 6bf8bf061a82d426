import type { PowerUpSheet, Station } from '../../core/index.ts';
import type { Computed } from '../store/computed.ts';
import { failureOf } from './failure-of.ts';
import { sheetLimitMs } from './limits.ts';
import { openPowerUpWorker } from './open-power-up-worker.ts';
import { watchThread } from './watched-thread.ts';

/** Works out the power-up sheet of a station in a thread of its own. Returns a function that ends it; then nothing comes. */
export function powerUpAside(station: Station, onDone: (sheet: Computed<PowerUpSheet>) => void): () => void {
  const thread = watchThread(openPowerUpWorker);
  thread.ask({ wants: 'sheet', station }, sheetLimitMs(station), (reply) => {
    thread.end();
    if ('error' in reply)
      onDone({ is: 'missing', failure: failureOf('working out the power-up sheet', station, reply.error) });
    else if ('sheet' in reply.answer) onDone({ is: 'fresh', value: reply.answer.sheet, of: station, at: Date.now() });
  });
  return thread.end;
}
