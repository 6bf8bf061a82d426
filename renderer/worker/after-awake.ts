const tickMs = 1000;

/**
 * Calls once so much time has passed in which the page was awake: it counts ticks, so that the hours in which a laptop
 * is shut are none, and a machine too busy to tick waits longer. Returns a function that calls it off.
 */
export function afterAwake(limitMs: number, act: () => void): () => void {
  let left = Math.ceil(limitMs / tickMs);
  const timer = setInterval(() => {
    left--;
    if (left > 0) return;
    clearInterval(timer);
    act();
  }, tickMs);
  return () => clearInterval(timer);
}
