/** Times of a warm run, in milliseconds. */
export interface Times {
  readonly median: number;
  /** 95th percentile. */
  readonly late: number;
}

/** Runs something again and again, each time on something freshly made, which is not timed. */
export function timed<T>(rounds: number, make: (round: number) => T, run: (made: T) => unknown): Times {
  for (let i = 0; i < Math.ceil(rounds / 4); i++) run(make(i));
  const times = Array.from({ length: rounds }, (_, i) => {
    const made = make(i);
    return timeOf(() => run(made));
  }).sort((a, b) => a - b);
  return { median: medianOf(times), late: times[Math.floor(rounds * 0.95)] ?? 0 };
}

/** What one run takes. */
export function timeOf(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

export const medianOf = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

export const inMs = ({ median, late }: Times): string =>
  `median ${median.toFixed(2).padStart(8)} ms  95th ${late.toFixed(2).padStart(8)} ms`;
