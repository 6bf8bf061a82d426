const leastMs = 1000;

export interface Patience {
  /** How long a computation may go on once a newer document waits. */
  readonly ms: () => number;
  /** One was finished, and took so long. */
  readonly finished: (tookMs: number) => void;
  /** One was ended for the newer document. */
  readonly ended: () => void;
}

/**
 * When to end a computation that nobody wants any more: after a second, or three times what the last one took. Each
 * time it comes to that, the next one gets twice as long, so that one does get done however fast edits follow.
 */
export function newPatience(): Patience {
  let ms = leastMs;
  return {
    ms: () => ms,
    finished: (tookMs) => {
      ms = Math.max(leastMs, 3 * tookMs);
    },
    ended: () => {
      ms *= 2;
    },
  };
}
