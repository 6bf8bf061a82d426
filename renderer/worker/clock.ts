export interface Clock {
  /** Acts after so many milliseconds, unless it runs already. */
  start(ms: number, act: () => void): void;
  stop(): void;
}

/** A clock that runs once at a time. */
export function newClock(): Clock {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    start(ms, act) {
      timer ??= setTimeout(() => {
        timer = undefined;
        act();
      }, ms);
    },
    stop() {
      clearTimeout(timer);
      timer = undefined;
    },
  };
}
