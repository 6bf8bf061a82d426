import { type Colouring, colourGraph } from './colour-graph.ts';
import type { NodePair } from './conflicts.ts';

/** So many choices between two pairs are tried in all combinations; further ones are left at their first pair. */
const mostChoices = 6;

/**
 * The fewest classes, and then the least weight outside class 0, with which one pair of each of `wanted` is told apart.
 * Undefined where `mostClasses` are not enough.
 */
export function bestClasses(
  weights: readonly number[],
  fixed: readonly (number | undefined)[],
  wanted: readonly (readonly NodePair[])[],
  mostClasses: number,
): Colouring | undefined {
  const single = wanted.filter((pairs) => pairs.length === 1).flat();
  const sure = new Set(single.map(nameOf));
  const choices = new Map<string, readonly NodePair[]>();
  for (const pairs of wanted) {
    if (pairs.length > 1 && !pairs.some((pair) => sure.has(nameOf(pair)))) choices.set(pairs.map(nameOf).join(), pairs);
  }
  const open = [...choices.values()].slice(0, mostChoices);
  const rest = [...choices.values()].slice(mostChoices).flatMap(([first]) => (first ? [first] : []));
  let best: Colouring | undefined;
  let isWhole = rest.length === 0;
  for (const chosen of combinations(open)) {
    const edges = weights.map(() => new Set<number>());
    for (const [one, two] of [...single, ...rest, ...chosen]) {
      // What nobody may change is as it is.
      if (fixed[one] !== undefined && fixed[one] === fixed[two]) continue;
      edges[one]?.add(two);
      edges[two]?.add(one);
    }
    const found = colourGraph({ weights, edges, fixed }, mostClasses);
    if (!found?.exact) isWhole = false;
    if (found && (!best || isBetter(weights, found, best))) best = found;
  }
  return best && { classes: best.classes, exact: isWhole };
}

const nameOf = ([one, two]: NodePair): string => `${Math.min(one, two)}-${Math.max(one, two)}`;

const combinations = (choices: readonly (readonly NodePair[])[]): NodePair[][] =>
  choices.reduce<NodePair[][]>((all, pairs) => all.flatMap((so) => pairs.map((pair) => [...so, pair])), [[]]);

function isBetter(weights: readonly number[], one: Colouring, two: Colouring): boolean {
  const count = ({ classes }: Colouring) => new Set(classes).size;
  const weight = ({ classes }: Colouring) => weights.reduce((sum, w, node) => sum + (classes[node] === 0 ? 0 : w), 0);
  return count(one) < count(two) || (count(one) === count(two) && weight(one) < weight(two));
}
