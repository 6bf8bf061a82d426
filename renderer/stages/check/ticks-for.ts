const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

/** Round milliseconds for a time axis, about a dozen at most, from 0. */
export function ticksFor(endMs: number): number[] {
  const step = steps.find((s) => endMs / s <= 12) ?? endMs / 12;
  return Array.from({ length: Math.floor(endMs / step) + 1 }, (_, i) => i * step);
}
