import { holdsUpTo } from '../../catalog/wire/fuse-tables.ts';
import { openingTime, shareOfRating } from '../../catalog/wire/fuses.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Reach } from '../../keydown/key-down.ts';
import { formatMs } from '../../quantity/format.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { conductorsOf, joinedTo } from '../../trial/metal/conductors.ts';
import { touchOf } from '../../trial/names.ts';
import { type FusePart, loadsOf, unitOfPart } from '../../trial/parts.ts';
import { averageOver } from '../../trial/power/battery-life.ts';
import { fuseName, fusePlace } from '../../trial/power/fuse-place.ts';
import { openedAt } from '../../trial/power/opened-at.ts';
import { defineRule } from '../rule.ts';

/** Up to this share of its rating a fuse has room. */
const nearAbove = 0.8;

export const fuseWillOpen = defineRule({
  id: 'power/fuse-will-open',
  severity: 'fault',
  title: 'The fuse opens',
  compares: 'the current through a fuse against its rating, with the time to open',
  why: 'Whatever the fuse feeds goes dead, perhaps in the middle of a transmission.',
  advice: 'Find out why so much flows; only where the wire allows it, fit the next size.',
  source:
    'time gates of ISO 8820-3 (blade) and IEC 60127-2 (5 × 20 mm); above 110 % a fuse is not sure to hold; 80 % of the rating for a continuous load (NEC 210.20), averaged by the mode’s duty',
  follows: ['power/reversed-polarity', 'power/short-circuit', 'drawing/fits-but-should-not'],
  messages: {
    opens: '{fuse} ({rated rated}) carries {amps A} {moment} and opens {time}.',
    near: '{fuse} ({rated rated}) carries {average A} on average {moment}, {share %} of its rating.',
  },
  looksAt: {
    fuse({ index, part }, { station, trial }, report) {
      const { ratedAmps: rated, family } = part.fuse;
      const carried = instantsOfPart(trial, index).map(({ name, reach }) => {
        const inReceive = name === 'receive';
        const amps = (inReceive && openedAt(trial, index)) || Math.abs(reach.dc.ampsIn(index));
        // A fuse warms up with the average over the dots and dashes; a peak opens it all the same.
        const between = Math.abs(trial.receive.dc.ampsIn(index));
        const average = inReceive ? amps : averageOver(amps, between, station.plan.duty);
        const [peakShare, share] = [shareOfRating(amps, rated), shareOfRating(average, rated)];
        return { name, reach, amps, average, peakShare, share };
      });
      const opens = carried.some(({ peakShare }) => peakShare > holdsUpTo);
      for (const { name, reach, amps, average, peakShare, share } of carried) {
        if (opens ? peakShare <= holdsUpTo : share <= nearAbove) continue;
        const told = opens ? peakShare : share;
        report({
          message: opens ? 'opens' : 'near',
          severity: opens ? 'fault' : 'doubt',
          at: [fusePlace(station, part)],
          values: {
            fuse: fuseName(station, part),
            rated,
            amps,
            average,
            share: told,
            moment: momentWords[name],
            time: timeWords(openingTime(amps, rated, family)?.toS),
          },
          moment: name,
          weight: told,
          touches: [touchOf(part.origin), ...unitsBehind(trial.circuit, reach, part)],
        });
      }
    },
  },
});

/** The latest that it opens, as people say it. */
function timeWords(seconds = Number.POSITIVE_INFINITY): string {
  if (!Number.isFinite(seconds)) return 'sooner or later';
  if (seconds < 1) return `within ${formatMs(seconds * 1000)}`;
  return seconds < 120 ? `within ${Number(seconds.toPrecision(2))} s` : `within ${Math.round(seconds / 60)} minutes`;
}

/** Units one of whose loads hangs on a fuse with no other fuse between. */
function unitsBehind(circuit: Circuit, reach: Reach, { a, b }: FusePart): string[] {
  const conductors = conductorsOf(circuit, reach.on, (p) => p.fuse !== undefined);
  const nodes = new Set([...joinedTo(conductors, a), ...joinedTo(conductors, b)]);
  return loadsOf(circuit).flatMap(({ part }) =>
    nodes.has(part.plus) || nodes.has(part.minus) ? [`unit:${unitOfPart(part)}`] : [],
  );
}
