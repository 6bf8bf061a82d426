import { afterAwake } from './after-awake.ts';
import { TookTooLong } from './watched-thread.ts';

/** What a promise gives; rejects with `TookTooLong` where that is not there within the limit. */
export function inTime<T>(promise: Promise<T>, limitMs: number): Promise<T> {
  return new Promise((resolve, reject) => {
    const stopClock = afterAwake(limitMs, () => reject(new TookTooLong(limitMs)));
    void promise.finally(stopClock).then(resolve, reject);
  });
}
