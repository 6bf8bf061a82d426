import type { Station } from '../../../core/index.ts';

/** Whether the drawing is the same. Documents share what did not change, so that this is quick. */
export const isSameButReadings = (a: Station, b: Station): boolean =>
  ([...new Set([...Object.keys(a), ...Object.keys(b)])] as (keyof Station)[]).every(
    (key) => key === 'readings' || a[key] === b[key],
  );
