/** Where a value of an axis lies on the drawing. */
export type Scale = (value: number) => number;

/** An even scale; an axis without extent puts all in its middle. */
export const scaleOf =
  (from: number, to: number, start: number, end: number): Scale =>
  (value) =>
    to === from ? (start + end) / 2 : start + ((value - from) / (to - from)) * (end - start);

/** Round values from one to the other, both inside, about as many as asked for: 1, 2 or 5 of a power of ten apart. */
export function roundTicks(from: number, to: number, about: number): number[] {
  const rough = (to - from) / about;
  if (!(rough > 0)) return [from];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5].find((s) => s * power >= rough * 0.999) ?? 10) * power;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** The range of some values with a little room, so that nothing lies on an edge. */
export function axisRange(values: readonly number[], leastSpan: number): { from: number; to: number } {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((high - low) * 0.06, (leastSpan - (high - low)) / 2);
  return { from: low - room, to: high + room };
}
