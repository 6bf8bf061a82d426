import { ringAt } from '../../station/ring-at.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { MixUpStudy } from '../acts/mix-up.ts';
import { bestClasses } from './best-classes.ts';
import { type Conflicts, conflictsOf, type Need, type NodePair } from './conflicts.ts';
import type { Measure, Scheme } from './measure.ts';
import { ringMeasure } from './ring-measure.ts';

/**
 * The colours that a scheme takes, in this order: first those that are far apart and are not used for plus and minus
 * (common practice). Green and yellow together is earth's (IEC 60445) and never taken.
 */
const palette: readonly RingColour[] = ['BU', 'OG', 'WH', 'VT', 'TQ', 'GY', 'BN', 'YE', 'GN', 'RD', 'BK'];

/**
 * The rings after which no mix-up of a study is left that injures or destroys and that a ring can tell: as few colours
 * as the conflicts ask for, on as few jacks as can be. Rings that are there stay, unless two jacks that must differ have
 * the same one, and what they tell apart stays told apart.
 */
export function schemeFor(study: MixUpStudy, station: Station): Scheme {
  const conflicts = conflictsOf(
    station,
    study.mixUps.filter(({ severity }) => severity === 'danger'),
  );
  const { colours, fixed } = ringsKept(station, conflicts);
  const weights = conflicts.jacks.map((jacks) => jacks.length);
  // Where there are not colours enough, what is least easily done goes without.
  for (let { needs } = conflicts, all = needs.length; ; needs = needs.slice(0, Math.floor(needs.length * 0.9))) {
    const wanted = [...needs.flatMap(({ acts }) => acts), ...conflicts.kept];
    const best = bestClasses(weights, fixed, wanted, colours.length + 1);
    if (!best && needs.length > 0) continue;
    const classes = best?.classes ?? fixed.map((c) => c ?? 0);
    const isHeld = ({ acts }: Need) => acts.every((pairs) => pairs.some((pair) => isApart(classes, pair)));
    const unheld = conflicts.needs.filter((need) => !isHeld(need)).map(({ mixUp }) => mixUp);
    return {
      measures: measuresOf(station, conflicts, classes, colours),
      exact: (best?.exact ?? false) && needs.length === all,
      left: [...conflicts.left, ...unheld],
    };
  }
}

const isApart = (classes: readonly number[], [one, two]: NodePair): boolean => classes[one] !== classes[two];

/** All colours by class, from 1 on, those of the station first; and the class of each node whose ring stays. */
function ringsKept(station: Station, { jacks, needs }: Conflicts) {
  const own = jacks.map(([first]) => ringAt(station, first));
  const there = [...new Set(own.flatMap((ring) => ring ?? []))];
  const colours = [...there, ...palette.filter((colour) => !there.includes(colour))];
  const pairs = needs.flatMap(({ acts }) => acts.flat());
  const fixed = own.map((ring, node): number | undefined => {
    if (ring === undefined) return undefined;
    // Of two with the same ring that must differ the first one keeps it; earth's stays in any case.
    const isRival = ([one, two]: NodePair) => Math.max(one, two) === node && own[one] === own[two];
    return ring !== 'GNYE' && pairs.some(isRival) ? undefined : colours.indexOf(ring) + 1;
  });
  return { colours, fixed };
}

function measuresOf(
  station: Station,
  { jacks, needs }: Conflicts,
  classes: readonly number[],
  colours: readonly RingColour[],
): Measure[] {
  return jacks.flatMap((alike, node) => {
    const colour = colours[(classes[node] ?? 0) - 1];
    if (colour === ringAt(station, alike[0])) return [];
    const takesPart = (pair: NodePair) => pair.includes(node) && isApart(classes, pair);
    const prevents = needs.filter(({ acts }) => acts.flat().some(takesPart)).map(({ mixUp }) => mixUp);
    return [ringMeasure(station, alike, colour ?? null, prevents)];
  });
}
