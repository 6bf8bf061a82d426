import type { Problem } from '../../../core/index.ts';
import { nonsenseIn } from './nonsense.ts';

/** More than a screen or a terminal shows of one problem. */
const longest = 1000;

/** What is wrong with a refusal itself: it needs a place and a whole sentence for every problem. */
export function whatIsWrongWithRefusal(problems: readonly Problem[]): string[] {
  if (problems.length === 0) return ['refused without any problem'];
  return problems.flatMap(({ place, message }) => [
    ...(place.trim() === '' ? [`a problem without a place: ${message}`] : []),
    ...(/^[“A-Z][\s\S]*[.?!]$/u.test(message) ? [] : [`not a sentence: ${place}: ${message.slice(0, 200)}`]),
    ...(place.length + message.length > longest ? [`a problem of ${place.length + message.length} characters`] : []),
    // A word of the file itself is between quotes; nothing else in the sentence may be odd.
    ...nonsenseIn(
      { name: 'refusal', text: `${place}: ${message.replace(/[“"][\s\S]*[”"]/g, (own) => own.replace(/\w/g, 'x'))}` },
      '',
    ),
  ]);
}
