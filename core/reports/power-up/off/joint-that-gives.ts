import type { Taking } from '../draft-step.ts';
import type { Expected } from '../sheet.ts';
import type { Tried } from './suspect.ts';

/** Where an open lead would show far too much, the same lead with a joint of some ohms may show just this. */
export function jointThatGives(
  taking: Taking,
  { value, quantity }: Expected,
  read: number,
  { suspect, shows }: Tried,
): Tried[] {
  const { withOhms } = suspect;
  if (!withOhms || value === null || (quantity !== 'V' && quantity !== 'A')) return [];
  const wanted = (read - value) / (shows - value);
  if (wanted <= 0 || wanted >= 0.95) return [];
  const showsWith = (ohms: number): number => {
    const seen = withOhms(ohms).see(taking.setup);
    return (seen && taking.probe(seen)) ?? value;
  };
  // Ohms as powers of ten: between a hundredth, which no joint is better than, and what is as good as open.
  let [low, high] = [-2, 4];
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if ((showsWith(10 ** middle) - value) / (shows - value) < wanted) low = middle;
    else high = middle;
  }
  const ohms = 10 ** high;
  const isReached = Math.abs((showsWith(ohms) - value) / (shows - value) - wanted) < 0.05;
  return isReached && high < 3.9 ? [{ suspect: withOhms(ohms), shows: read }] : [];
}
