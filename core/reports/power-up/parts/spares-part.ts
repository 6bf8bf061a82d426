import { fuseFamilyNames } from '../../../catalog/wire/fuse-family-names.ts';
import { fuseColour } from '../../../catalog/wire/fuses.ts';
import { plural } from '../../../quantity/counted.ts';
import { classOf } from '../../../station/parts.ts';
import { plugOf } from '../../../station/plug-of.ts';
import { fusesOf } from '../../../trial/parts.ts';
import { fuseSeat } from '../../../trial/power/fuse-place.ts';
import type { Context } from '../context.ts';
import { type DraftPart, doing } from '../draft-step.ts';

/** What to have in a drawer: a fuse of each rating in use, and a patch lead for each pair of RF plugs. */
export function sparesPart({ station, facts }: Context): DraftPart {
  const fuses = new Map<string, { words: string; seats: Set<string> }>();
  for (const { trial } of facts.hookups) {
    for (const { part } of fusesOf(trial.circuit)) {
      const { ratedAmps, family } = part.fuse;
      const key = `${family}-${ratedAmps}`;
      const colour = fuseColour(ratedAmps, family);
      const words = `${ratedAmps} A ${fuseFamilyNames[family]}${colour === null ? '' : ` (${colour})`}`;
      const known = fuses.get(key) ?? { words, seats: new Set() };
      known.seats.add(fuseSeat(station, part));
      fuses.set(key, known);
    }
  }
  const leads = new Set<string>();
  for (const cable of station.cables) {
    if (classOf(station, cable) !== 'rf') continue;
    const names = (['a', 'b'] as const).map((end) => plugOf(station, cable, end)?.name ?? '').sort();
    if (names.every(Boolean)) leads.add(names.join(' to '));
  }
  return {
    id: 'spares',
    title: 'Spares',
    before: 'Where a hand finds them.',
    steps: [
      ...[...fuses].map(([key, { words, seats }]) =>
        doing({
          id: `spare/${key}`,
          text: `${plural(seats.size, 'A fuse', 'Two fuses')}, ${words}: ${plural(seats.size, 'fits', 'fit')} ${[...seats].join(', ')}.`,
        }),
      ),
      ...[...leads].sort().map((lead) => doing({ id: `spare/lead ${lead}`, text: `A coax lead, ${lead}, tested.` })),
    ],
  };
}
