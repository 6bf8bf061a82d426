import { findCable, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { Cable, PortRef, Station } from '../../station/schema/schema.ts';
import type { Act } from './act.ts';
import type { Ease } from './mix-up.ts';

/** Connectors that keep no count of which way round, or in which of several, they go (common practice). */
const withoutKey: readonly string[] = ['posts', 'ring', 'wire'];

interface Reason {
  readonly score: number;
  readonly words: string;
}

/** How easily a hand does what an act says: where the jacks are, what they look like, how often the plug is moved. */
export function easeOf(station: Station, act: Act): Ease {
  const cables = act.cables.flatMap((id) => findCable(station, id) ?? []);
  const ports = act.at.flatMap((place): PortRef[] =>
    'unit' in place && place.port !== undefined ? [{ unit: place.unit, port: place.port }] : [],
  );
  const reasons = [...jacks(station, ports), ...leads(station, act, cables)];
  return { score: reasons.reduce((sum, r) => sum + r.score, 0), words: reasons.map((r) => r.words) };
}

function jacks(station: Station, ports: readonly PortRef[]): Reason[] {
  const [one, two] = ports;
  if (!one || !two) return [];
  const [first, second] = [portOf(station, one).port, portOf(station, two).port];
  const isSame = first.connector === second.connector;
  if (one.unit !== two.unit) return isSame ? [{ score: 1, words: 'the two jacks are alike' }] : [];
  return [
    isSame
      ? { score: 4, words: 'two alike jacks on one panel' }
      : { score: 2, words: 'both jacks are on one panel, and the plug goes into either' },
  ];
}

function leads(station: Station, { kind, cables: ids }: Act, cables: readonly Cable[]): Reason[] {
  const reasons: Reason[] = [];
  const [one, two] = cables;
  if (one && two && ids.length === 2 && one.kind === two.kind) {
    reasons.push({ score: 1, words: 'the two leads look the same' });
  }
  if (cables.some((cable) => cable.hookups !== undefined)) {
    reasons.push({ score: 3, words: 'it is plugged in anew between hook-ups' });
  }
  const isBare = cables.some((cable) =>
    (['a', 'b'] as const).some((end) => withoutKey.includes(plugOf(station, cable, end)?.face ?? '')),
  );
  if (kind === 'crossed' && isBare) reasons.push({ score: 2, words: 'nothing keeps plus from going on minus' });
  if (kind === 'turned') reasons.push({ score: 1, words: 'both ends of it have the same plug' });
  if (kind === 'switched') reasons.push({ score: 3, words: 'a switch stays where it was last' });
  return reasons;
}
